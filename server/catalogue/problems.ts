import { codedError, type CodedError } from '../errors.js';

/** One thing wrong in the tables: where it stands, what was found, what would do. */
export interface Problem {
  readonly file: string;
  readonly line: number;
  readonly field: string;
  readonly found: string;
  readonly accepts: string;
}

/** Thrown when the tables cannot be used; `problems` holds all of them, in reading order. */
export interface CatalogueError extends CodedError {
  readonly problems: readonly Problem[];
}

/** `rules/inks.yaml:41 inks.oil-relief.liftsWet[2]: found "veg-oyl", accepts an agent id (...)` */
function problemLine({ file, line, field, found, accepts }: Problem): string {
  return `${file}:${line} ${field}: found ${found}, accepts ${accepts}`;
}

/** The error to throw for these problems, each on a line of its own in the message. */
export function catalogueError(problems: readonly Problem[]): CatalogueError {
  const error = codedError('RULES_WRONG', { problems: problems.map(problemLine).join('\n') });
  return Object.assign(error, { problems });
}

/** A value as it is shown in a message: short, on one line, and "nothing" when it is not there. */
export function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text = JSON.stringify(value);
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}
