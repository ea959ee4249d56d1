import { describe, expect, it } from 'vitest';
import { acceptedForm } from '../../../server/web/plugins/wantedForm.js';

describe('the form that Accept likes best', () => {
  it.each([
    [undefined, 'html'],
    ['', 'html'],
    ['text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8', 'html'],
    ['*/*', 'html'],
    ['application/json', 'json'],
    ['application/problem+json', 'json'],
    ['application/json, */*;q=0.1', 'json'],
    ['text/html;q=0.4, application/json;q=0.5', 'json'],
    ['text/plain', 'txt'],
    ['text/*;q=0.3, application/json;q=0.2', 'html'],
    ['text/html;q=0, */*', 'json'],
    ['text/plain;q=lots, text/html', 'html'],
    ['image/png', 'html'],
  ])('of %j is %s', (accept, form) => {
    expect(acceptedForm(accept)).toBe(form);
  });
});
