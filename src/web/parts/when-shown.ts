/** How often it is looked whether the page is there yet, milliseconds. */
const pause = 100

/** Resolves once the page shows what it was opened for; what can wait leaves the device to that until then. */
export async function whenShown(): Promise<void> {
  while (document.querySelector('.loading, .building, [aria-busy=true]') !== null)
    await new Promise((resolve) => setTimeout(resolve, pause))
}
