/** SHA-256 of `content`, hexadecimal. Browsers give it only to pages that came encrypted or from this machine. */
export async function sha256Of(content: ArrayBuffer): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', content)
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}
