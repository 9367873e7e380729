// How Vite puts the server, the command line and the step that makes the reference file into a few files of dist/:
// a process that starts opens and resolves each of its files, which of hundreds takes longer than the work itself.
import { defineConfig } from 'vite';
import { at } from './shared.mjs';

/** Packages that stay files of their own: two hold native code, and the solver's WebAssembly lies beside it. */
const external = ['better-sqlite3', 'highs', 'pg'];

export default defineConfig({
  root: at('src'),
  logLevel: 'warn',
  // Read by JSON.parse, which is faster than the same as JavaScript.
  json: { stringify: true, namedExports: false },
  // What the program is made of, summed, as `src/server/program.ts` has it.
  define: { POUCHFUL_PROGRAM: JSON.stringify(process.env.POUCHFUL_PROGRAM ?? '') },
  ssr: { noExternal: true, external },
  build: {
    ssr: true,
    outDir: at('dist'),
    emptyOutDir: false,
    target: 'node20',
    minify: false,
    rolldownOptions: {
      input: {
        'cli/main': at('src', 'cli', 'main.ts'),
        'server/main': at('src', 'server', 'main.ts'),
        'foods/build/main': at('src', 'foods', 'build', 'main.ts'),
      },
      // One folder deep, as the sources are: what they find beside them by a path lies there for them too.
      output: { entryFileNames: '[name].js', chunkFileNames: 'parts/[name]-[hash].js' },
    },
  },
});
