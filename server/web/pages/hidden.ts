/** Of a route that /api/openapi.json does not describe: a page for people. */
export const HIDDEN = { schema: { hide: true } } as const;
