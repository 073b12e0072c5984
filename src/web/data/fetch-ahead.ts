/**
 * Fetches the files of a part of the page, and then loads the part. A browser keeps for good that a module could not be
 * fetched, so one that is asked for while there is no network could not be had until the page is opened anew; a file
 * that is only fetched can be asked for again. The bundler calls this, by its own name for it, around each `import()`.
 * @param load   loads the part
 * @param files  what it consists of and needs, as paths below the page's root, or seen from `from`
 * @param from   address of the script that loads it, where the page may lie anywhere
 * @throws when a file cannot be fetched, or the part fails as it is loaded
 */
export async function __vitePreload<T>(
  load: () => Promise<T>,
  files: readonly string[] = [],
  from: string = `${location.origin}/`,
): Promise<T> {
  await Promise.all(files.map((file) => fetchOnce(new URL(file, from).href)))
  return load()
}

/** What is fetched or on its way. */
const fetched = new Map<string, Promise<void>>()

function fetchOnce(address: string): Promise<void> {
  const coming = fetched.get(address) ?? (address.endsWith('.css') ? styleHere(address) : scriptHere(address))
  fetched.set(address, coming)
  coming.catch(() => fetched.delete(address))
  return coming
}

/** It is in the browser's cache then. A link that fetches ahead would not do: one that failed once is not tried again. */
async function scriptHere(address: string): Promise<void> {
  const answer = await fetch(address)
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`)
  await answer.arrayBuffer()
}

/** That of the page itself is named by its document, and is not put in again after what was meant to overrule it. */
function styleHere(address: string): Promise<void> {
  const styles = [...document.querySelectorAll<HTMLLinkElement>('link[rel=stylesheet]')]
  if (styles.some(({ href }) => href === address)) return Promise.resolve()
  const link = document.createElement('link')
  link.rel = 'stylesheet'
  link.href = address
  return new Promise((resolve, reject) => {
    link.addEventListener('load', () => resolve())
    link.addEventListener('error', () => {
      link.remove()
      reject(new Error(`${address} could not be fetched`))
    })
    document.head.append(link)
  })
}
