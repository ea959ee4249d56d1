import type { Reporter, TestModule, SerializedError } from 'vitest/node';

/**
 * Prints `N passed, N failed` (and `, N skipped`) as the very last line, when the
 * process ends. A file that could not be loaded, a stray error or coverage below its
 * bar counts as one failed.
 */
export default function lastLine(): Reporter {
  const count = { passed: 0, failed: 0, skipped: 0 };
  process.once('exit', (code) => {
    const failed = code !== 0 && count.failed === 0 ? 1 : count.failed;
    const skipped = count.skipped > 0 ? `, ${count.skipped} skipped` : '';
    process.stdout.write(`${count.passed} passed, ${failed} failed${skipped}\n`);
  });
  return {
    onTestRunEnd(modules: readonly TestModule[], errors: readonly SerializedError[]) {
      for (const module of modules) {
        for (const test of module.children.allTests()) {
          const { state } = test.result();
          count[state === 'pending' ? 'skipped' : state] += 1;
        }
        count.failed += module.errors().length;
        for (const suite of module.children.allSuites()) count.failed += suite.errors().length;
      }
      count.failed += errors.length;
    },
  };
}
