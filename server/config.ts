import { z } from 'zod';
import { codedError } from './errors.js';

const Port = z
  .string()
  .regex(/^\d{1,5}$/, { error: 'a port number, 0 to 65535' })
  .transform(Number)
  .pipe(z.number().max(65_535));

const Origin = z
  .url({ protocol: /^https?$/, error: 'an origin such as https://sheets.example' })
  .refine((text) => URL.canParse(text) && new URL(text).origin === text.replace(/\/$/, ''), {
    error: 'an origin such as https://sheets.example',
  })
  .transform((text) => new URL(text).origin);

const Settings = z.object({
  HOST: z.string().min(1).default('127.0.0.1'),
  PORT: Port.default(3000),
  PUBLIC_ORIGIN: Origin.optional(),
  LOG_LEVEL: z.enum(['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent']).default('warn'),
});

/** What the process was told from outside. */
export interface Config {
  readonly host: string;
  readonly port: number;
  /** The address that people reach this server by, where a proxy stands before it. */
  readonly publicOrigin?: string;
  readonly logLevel: z.infer<typeof Settings>['LOG_LEVEL'];
}

/**
 * The settings of this process, with a working value for each that is not given.
 * Throws CONFIG_WRONG, naming every setting that cannot be used.
 */
export function readConfig(environment: NodeJS.ProcessEnv = process.env): Config {
  const read = Settings.safeParse(environment);
  if (!read.success) {
    const problems = read.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`);
    throw codedError('CONFIG_WRONG', { problems: problems.join('; ') });
  }
  const { HOST, PORT, PUBLIC_ORIGIN, LOG_LEVEL } = read.data;
  return Object.freeze({
    host: HOST,
    port: PORT,
    ...(PUBLIC_ORIGIN !== undefined && { publicOrigin: PUBLIC_ORIGIN }),
    logLevel: LOG_LEVEL,
  });
}
