import { describe, expect, it } from 'vitest';
import { errorView } from '../../../server/web/presenters/errorView.js';
import { renderPage } from '../../support/views.js';

describe('the page for what could not be done', () => {
  it('says whose fault it is by the status', () => {
    const title = (status: number) => errorView({ status, says: '' }).titleKey;
    expect([400, 404, 422, 429].map(title)).toEqual([
      'error.400',
      'error.404',
      'error.422',
      'error.429',
    ]);
    expect([405, 413, 415].map(title)).toEqual(['error.400', 'error.400', 'error.400']);
    expect([500, 503].map(title)).toEqual(['error.other', 'error.other']);
  });

  it('tells what was found and what fits, as words', () => {
    const html = renderPage(
      'error',
      errorView({
        status: 422,
        says: 'No table has a row called <x>.',
        problems: [{ path: '/', field: '', got: '<b>', accepts: 'a number' }],
      }),
    );
    expect(html).toContain('No table has a row called &lt;x&gt;.');
    expect(html).toContain('&lt;b&gt;');
    expect(html).toContain('a number');
  });
});
