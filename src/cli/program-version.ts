import { readFile } from 'node:fs/promises'

/** As the package states it. */
export async function programVersion(): Promise<string> {
  const text = await readFile(new URL('../../package.json', import.meta.url), 'utf8')
  return (JSON.parse(text) as { readonly version: string }).version
}
