/** Asks the browser to keep what is on this device, as long as it did not promise to, and says whether it promised. */
export async function keepStorage(): Promise<boolean> {
  // Browsers that show a page which came without encryption from another machine have no such thing.
  const storage = navigator.storage as StorageManager | undefined
  return (await storage?.persisted()) === true || (await storage?.persist()) === true
}
