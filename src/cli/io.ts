import { randomUUID } from 'node:crypto'
import { readFile, rename, rm, writeFile } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import type { Result } from '../core/result.ts'
import { theirs } from '../core/theirs.ts'
import { type InputProblem, written } from '../formats/input-problem.ts'
import { decodeXml } from '../formats/landxml/decode-xml.ts'
import { type Unusual, unusualInReadings, unusualInRun } from '../formats/range/unusual.ts'
import { parseJson } from '../formats/read-json.ts'
import { type ReadingsFile, readReadings } from '../formats/readings/readings-file.ts'
import { type RunFile, runFromValue } from '../formats/run/run-file.ts'
import { type JudgedRun, judgeReadings } from '../operations/judge-readings.ts'
import { meansOfToday } from '../operations/means-of-today.ts'
import type { RequiredRun } from '../operations/require-by.ts'
import { requireRun } from '../operations/require-run.ts'
import type { RunHistory } from '../operations/run-history.ts'
import { english } from '../words/english.ts'
import type { Print } from '../words/print.ts'
import { BadInput } from './command.ts'
import { streams } from './streams.ts'

/** The words of the command line: in English, lengths as they are published; what is said of a run or site is said in its own units. */
export const words: Print = english(null)

/** The text of a file; `-` is standard input. */
export const readText = async (file: string): Promise<string> => (await readBytes(file)).toString('utf8')

/** The same of a file that may be XML, in the encoding that it names. */
export const readXmlText = async (file: string): Promise<string> =>
  soundValue(decodeXml(shownName(file), await readBytes(file)))

async function readBytes(file: string): Promise<Buffer> {
  if (file === '-') return readStandardInput()
  try {
    return await readFile(file)
  } catch (cause) {
    throw new BadInput([{ file, place: '', expected: { kind: 'readable file' }, found: reasonOf(cause) }])
  }
}

async function readStandardInput(): Promise<Buffer> {
  const chunks: Buffer[] = []
  for await (const chunk of streams().stdin) chunks.push(chunk as Buffer)
  return Buffer.concat(chunks)
}

function reasonOf(cause: unknown): InputProblem['found'] {
  const code = (cause as NodeJS.ErrnoException).code
  if (code === 'ENOENT') return { kind: 'no such file' }
  if (code === 'EISDIR') return { kind: 'a folder' }
  if (code === 'EACCES') return { kind: 'no permission' }
  throw cause
}

export function soundValue<T>(result: Result<T, readonly InputProblem[]>): T {
  if (!result.ok) throw new BadInput(result.error)
  return result.value
}

export const shownName = (file: string): string => (file === '-' ? 'standard input' : file)

/** A run file, or the result of the need command, which holds one. */
export const loadRun = async (file: string): Promise<RunFile> => runIn(shownName(file), await readText(file))

function runIn(name: string, text: string): RunFile {
  const run = soundValue(runFromValue(name, runWithin(soundValue(parseJson(name, text)))))
  warn(name, unusualInRun(run))
  return run
}

/** Says what is read and seldom right. */
export function warn(name: string, unusual: readonly Unusual[]): void {
  for (const one of unusual) say(`${name}: ${words.say({ kind: 'unusual', ...one })}`)
}

/** @param raw  a run, or the result of the need command */
function runWithin(raw: unknown): unknown {
  if (typeof raw !== 'object' || raw === null || !('format' in raw && 'run' in raw)) return raw
  return raw.format === 'lapwise-need/1' && raw.run !== null ? raw.run : raw
}

export const loadRequired = async (file: string): Promise<RequiredRun> =>
  soundValue(requireRun(shownName(file), await loadRun(file)))

export async function loadJudged(runFile: string, readingsFile: string): Promise<JudgedRun> {
  return (await loadRead(runFile, readingsFile)).judged
}

/** The run as it is judged, and its readings file. */
export async function loadRead(runFile: string, readingsFile: string): Promise<ReadRun> {
  const required = await loadRequired(runFile)
  return judgedBy(required, shownName(readingsFile), await readText(readingsFile))
}

interface ReadRun {
  readonly judged: JudgedRun
  readonly file: ReadingsFile
}

/**
 * @param text     a readings file, which has to be of this run
 * @param history  all versions of the run, where a device brought them
 */
export function judgedBy(
  required: RequiredRun,
  name: string,
  text: string,
  history: RunHistory | null = null,
): ReadRun {
  const file = soundValue(readReadings(name, text))
  const { run, readings, findings } = file
  if (run !== required.run.name)
    throw new BadInput([
      { file: name, place: 'run', expected: { kind: 'run named', name: required.run.name }, found: written(run) },
    ])
  const at = history && { history, means: meansOfToday }
  const judged = soundValue(judgeReadings(name, required, readings, at, findings))
  warn(name, unusualInReadings(readings, required.requirements))
  return { judged, file }
}

/** Writes a whole file or none: aside first, then into place. */
export async function writeWhole(
  file: string,
  content: string | Uint8Array | AsyncIterable<string | Uint8Array>,
): Promise<void> {
  const aside = join(dirname(file), `.${basename(file)}.${randomUUID()}`)
  try {
    await writeFile(aside, content)
    await rename(aside, file)
  } catch (cause) {
    await rm(aside, { force: true })
    const { code } = cause as NodeJS.ErrnoException
    if (code === 'ENOENT' || code === 'EACCES' || code === 'EISDIR' || code === 'ENOSPC' || code === 'ENOTDIR') {
      throw new BadInput([{ file, place: '', expected: { kind: 'writable file' }, found: theirs(code) }])
    }
    throw cause
  }
}

export const print = (text: string): void => {
  streams().stdout.write(`${text}\n`)
}

export const printJson = (value: unknown): void => print(JSON.stringify(value, null, 2))

/** What is wrong, or seldom right. */
export const say = (text: string): void => {
  streams().stderr.write(`${text}\n`)
}

/** What was done, for whoever wants to hear it. */
export const note = (text: string): void => {
  if (!streams().isQuiet) say(text)
}

/** How far it is, where a person looks on. */
export const noteProgress = (text: string): void => {
  if (streams().stderr.isTTY === true) note(text)
}
