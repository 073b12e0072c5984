// Writes down every edition of a shipped sheet that is not written down yet: its hash in src/sheets/editions.json and
// its content in src/sheets/landed/, where it stays for ever. A sheet whose content changed needs a new version first.
import { execFileSync } from 'node:child_process'
import { readFileSync, writeFileSync } from 'node:fs'
import { canonicalJson } from '../src/formats/canonical-json.ts'
import { shippedSheets } from '../src/sheets/shipped-sheets.ts'
import { sha256 } from '../src/store/sha256.ts'

interface Edition {
  readonly id: string
  readonly version: string
  readonly sha256: string
}

process.chdir(new URL('../src/sheets/', import.meta.url).pathname)
const editions: Edition[] = JSON.parse(readFileSync('editions.json', 'utf8'))
for (const sheet of shippedSheets) {
  const { id, version } = sheet
  const hash = sha256(canonicalJson(sheet))
  const known = editions.find((one) => one.id === id && one.version === version)
  if (known?.sha256 === hash) continue
  if (known !== undefined) throw new Error(`${id} was changed: give it a version after ${version}`)
  editions.push({ id, version, sha256: hash })
  writeFileSync(`landed/${id}-${version}.json`, readFileSync(`${id}.json`))
  console.log(`wrote ${id} ${version}`)
}
writeFileSync('editions.json', JSON.stringify(editions))
execFileSync('npx', ['biome', 'format', '--write', 'editions.json'], { stdio: 'inherit' })
