/** Sayings of several kinds, each with the same values or none. */
export type Kinds<K extends string, Values = unknown> = K extends string ? { readonly kind: K } & Values : never
