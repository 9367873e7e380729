import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const here = fileURLToPath(new URL('.', import.meta.url));
const server = 'http://127.0.0.1:4173';

export default defineConfig({
  root: here,
  base: './',
  plugins: [react()],
  worker: { format: 'es' },
  build: {
    outDir: fileURLToPath(new URL('../../dist/web', import.meta.url)),
    emptyOutDir: true,
    target: 'es2022',
  },
  server: { proxy: { '/api': server, '/reference.bin': server } },
});
