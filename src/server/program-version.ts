import { readFile } from 'node:fs/promises'

const packageFile = new URL('../../package.json', import.meta.url)

/** As package.json has it. */
export async function programVersion(): Promise<string> {
  return (JSON.parse(await readFile(packageFile, 'utf8')) as { readonly version: string }).version
}
