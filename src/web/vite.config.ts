import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const here = fileURLToPath(new URL('.', import.meta.url));
const server = 'http://127.0.0.1:4173';

/** Lists of names and figures: each a file of its own, the same for the page and its worker. */
const lists = {
  debugName: 'lists',
  name: (id: string) => `list-${/([\w-]+)\.json/.exec(id)?.[1]}`,
  test: /src\/foods\/(cautions|data|ingredients)\/.*\.json$|everyday-names\.json$/,
  priority: 9,
};

export default defineConfig({
  root: here,
  base: './',
  plugins: [react()],
  worker: {
    format: 'es',
    rolldownOptions: {
      output: {
        // As the page has them: what both have, such as the texts, is then one file, which the browser fetches once.
        topLevelVar: true,
        comments: false,
        codeSplitting: {
          groups: [
            lists,
            { name: 'solver', test: /node_modules\/highs\//, priority: 8 },
            // What is asked first, and what judges a mix, are one file each: the browser finds the pieces of a worker one
            // after the other, as each names the next.
            { name: 'begin', test: /worker\/formulation\.worker\.ts$/, priority: 2 },
            { name: 'mixes', test: /worker\/mixes\.ts$/, priority: 1 },
          ],
        },
      },
    },
  },
  build: {
    outDir: fileURLToPath(new URL('../../dist/web', import.meta.url)),
    emptyOutDir: true,
    target: 'es2022',
    modulePreload: { polyfill: false },
    // Screens share classes, so the styles are one file: 17 kB, compressed.
    cssCodeSplit: false,
    rolldownOptions: {
      output: {
        // What the first page needs is one file: one answer of the server, and smaller compressed than its pieces.
        codeSplitting: {
          groups: [
            lists,
            { name: 'page', test: /src\/web\/app\/main\.tsx$/, priority: 2 },
            { name: 'now', test: /src\/web\/today\/ForMix\.tsx$/, priority: 1 },
          ],
        },
      },
    },
  },
  server: { proxy: { '/api': server, '/reference.bin': server } },
});
