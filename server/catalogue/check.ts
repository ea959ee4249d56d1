/** `npm run rules:check`: checks rules/ and says what is in it, or everything that is wrong. */
import { loadCatalogue } from './loadCatalogue.js';
import { reportTables } from './report.js';

try {
  const catalogue = loadCatalogue(new URL('../../rules/', import.meta.url));
  process.stdout.write(`${reportTables(catalogue)}\n`);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
