/** Hands `content` to the browser to save under this name. */
export function download(content: Blob, file: string): void {
  const address = URL.createObjectURL(content)
  const link = document.createElement('a')
  link.href = address
  link.download = file
  link.click()
  // The browser has taken the content over by then: our judgement.
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}
