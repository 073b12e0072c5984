/** A share as whole percent. */
export const percent = (share: number): string => `${Math.round(100 * share)}%`
