/** Bytes as people read them. */
export function megabytes(bytes: number): string {
  if (bytes < 1e5) return `${Math.ceil(bytes / 1000)} kB`
  return `${(bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0)} MB`
}
