/** What a browser may load and run for the page: its own files alone. As a header or, from a plain host, within the page. */
export const contentPolicy: readonly string[] = [
  "default-src 'self'",
  "img-src 'self' blob: data:",
  "worker-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
]
