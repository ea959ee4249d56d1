import { frameOf, type FrameView } from './frame.js';
import type { Problem } from '../forms/problem.js';

/** A calm page for what could not be done. */
export interface ErrorView {
  readonly frame: FrameView;
  readonly status: number;
  readonly titleKey: string;
  readonly says: string;
  readonly problems: readonly Pick<Problem, 'got' | 'accepts'>[];
}

const TITLES: Readonly<Record<number, string>> = {
  400: 'error.400',
  404: 'error.404',
  422: 'error.422',
  429: 'error.429',
};

/** `says` is the message of the coded error; `problems` what the address or body held that is wrong. */
export function errorView(error: {
  readonly status: number;
  readonly says: string;
  readonly problems?: readonly Problem[];
}): ErrorView {
  const titleKey = TITLES[error.status] ?? (error.status < 500 ? 'error.400' : 'error.other');
  return {
    frame: frameOf('error', { key: titleKey }),
    status: error.status,
    titleKey,
    says: error.says,
    problems: (error.problems ?? []).map(({ got, accepts }) => ({ got, accepts })),
  };
}
