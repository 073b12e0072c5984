import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** Programs that nobody here wrote, from Debian's packages poppler-utils, qpdf and python3. */
export type OutsideProgram = 'pdftotext' | 'pdffonts' | 'pdfimages' | 'pdfinfo' | 'pdftoppm' | 'qpdf' | 'python3'

/** Whether `program` is installed; says so where it is not, so that a skipped check is seen. */
export function isInstalled(program: OutsideProgram): boolean {
  const found =
    spawnSync(program, [program === 'qpdf' || program === 'python3' ? '--version' : '-v']).error === undefined
  if (!found) console.warn(`${program} is not installed: the checks that it makes are skipped`)
  return found
}

/** Of this process, which runs one file of tests after the other. */
const folder = mkdtempSync(join(process.env.LAPWISE_TEST_WRITTEN!, 'documents-'))

/** A file with `bytes` in a folder that goes when the round ends. */
export function fileOf(bytes: Uint8Array, name: string): string {
  const path = join(folder, name)
  writeFileSync(path, bytes)
  return path
}

export const outputOf = (program: OutsideProgram, ...words: readonly string[]): string =>
  execFileSync(program, words, { encoding: 'utf8', maxBuffer: 2 ** 28, stdio: ['ignore', 'pipe', 'ignore'] })

/** Exit status of `qpdf --check`: 0 for a sound file. */
export const qpdfCheck = (path: string): number | null => statusOf('qpdf', '--check', path)

const statusOf = (program: OutsideProgram, ...words: readonly string[]): number | null =>
  spawnSync(program, words).status

/** All text of a PDF in the order in which it was set, with single spaces, and without places to break a word. */
export const textOf = (path: string): string =>
  outputOf('pdftotext', '-raw', path, '-').replaceAll('\u200b', '').replace(/\s+/g, ' ')

/** Red, green and blue of each pixel of a page, drawn at so many pixels an inch. */
export function pixelsOf(
  path: string,
  page: number,
  perInch = 72,
): { readonly width: number; readonly pixels: Uint8Array } {
  const out = `${path}-${page}`
  outputOf('pdftoppm', '-r', `${perInch}`, '-singlefile', '-f', `${page}`, '-l', `${page}`, path, out)
  const ppm = readFileSync(`${out}.ppm`)
  const head = /^P6\s(\d+)\s\d+\s255\s/.exec(ppm.subarray(0, 40).toString('latin1'))!
  return { width: Number(head[1]), pixels: ppm.subarray(head[0].length) }
}
