export const readerSchemas = (): Readonly<Record<string, unknown>> => ({});
