/**
 * How an older document becomes a newer one: the entry of version `v` gives a document of version
 * `v + 1`, without changing the one it was given. Version 1 is the first, so there are none yet.
 */
export const migrations: Readonly<Record<number, (document: object) => object>> = {};
