/** Every coded error of the project: HTTP status, and what it says ({x} is filled in). */
export const ERRORS = {
  CONFIG_WRONG: { status: 500, message: 'A setting cannot be used. {problems}' },
  RULES_WRONG: { status: 500, message: 'The tables in rules/ cannot be used.\n{problems}' },
  VIEWS_WRONG: { status: 500, message: 'A page template cannot be used. {problems}' },
  REQUEST_UNREADABLE: { status: 400, message: 'The request could not be read.' },
  METHOD_WRONG: { status: 405, message: 'This address is only read: ask with GET.' },
  BENCH_WRONG: { status: 422, message: 'The bench was read, but something on it cannot be used.' },
  BODY_WRONG: { status: 422, message: 'The body was read, but something in it cannot be used.' },
  PAGE_UNKNOWN: { status: 404, message: 'There is no page at this address.' },
  RULE_UNKNOWN: { status: 404, message: 'No table has a row called {id}.' },
  UNEXPECTED: { status: 500, message: 'Something went wrong on our side.' },
} as const satisfies Readonly<Record<string, { status: number; message: string }>>;

export type ErrorCode = keyof typeof ERRORS;

export interface CodedError extends Error {
  readonly code: ErrorCode;
}

/** The message of a code with its {placeholders} filled from `values`. */
export function errorMessage(
  code: ErrorCode,
  values: Readonly<Record<string, string>> = {},
): string {
  return ERRORS[code].message.replace(/\{(\w+)\}/g, (whole, name: string) => values[name] ?? whole);
}

/** An error to throw: coded, with its message filled in. */
export function codedError(
  code: ErrorCode,
  values: Readonly<Record<string, string>> = {},
): CodedError {
  return Object.assign(new Error(errorMessage(code, values)), { code, name: code });
}
