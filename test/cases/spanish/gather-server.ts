import { readdirSync, readFileSync } from 'node:fs'

const server = new URL('../../../src/server/', import.meta.url)

/** Every sentence in the code of the server that it answers with, `1` for what it fills in. */
export function textsOfServer(): string[] {
  return readdirSync(server)
    .filter((file) => file.endsWith('.ts') && !/^(main|settings|demo)[.]/.test(file))
    .flatMap((file) => readFileSync(new URL(file, server), 'utf8').match(said) ?? [])
    .map((found) => found.replace(/^[^'`]*['`]|['`]$/g, '').replaceAll(/\$\{[^}]*\}/g, '1'))
}

const said = /(?:message: |reason: |badInput\(|return )(?:'[^']* [^']*'|`[^`]* [^`]*`)/g
