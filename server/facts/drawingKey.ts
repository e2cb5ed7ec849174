/** The key of the drawing of a thing: "plug-cee-7-16". It is a part of an address. */
export const drawingKey = (kind: 'socket' | 'plug' | 'inlet' | 'connector' | 'dc', name: string): string =>
  `${kind}-${name
    .toLowerCase()
    .replace(/[^a-z0-9.]+/g, '-')
    .replace(/^-|-$/g, '')}`
