// Runs every bench in bench/ (TypeScript) through the compiler; ratios are measured side by side in one run.
import { execFileSync } from 'node:child_process';
import { cpSync, readdirSync } from 'node:fs';

execFileSync('npx', ['tsc', '--noEmit', 'false', '--outDir', 'dist/bench-run'], { stdio: 'inherit' });
cpSync('src/foods/data', 'dist/bench-run/src/foods/data', { recursive: true });
for (const file of readdirSync('bench').filter((f) => f.endsWith('.ts'))) {
  execFileSync(process.execPath, [`dist/bench-run/bench/${file.replace(/\.ts$/, '.js')}`], {
    stdio: 'inherit',
  });
}
