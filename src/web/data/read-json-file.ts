import { err, ok } from '../../core/result.ts'
import { m } from '../messages.ts'
import { later } from './later.ts'
import type { Answer } from './run-source.ts'

/**
 * What stands in a JSON file that somebody picked.
 *
 * @param noJson  said over the problems of a file that is none
 */
export async function readJsonFile(file: File, noJson: string): Answer<unknown> {
  const [text, reader] = await Promise.all([
    file.text().catch(() => null),
    later(() => import('../../formats/read-json.ts')),
  ])
  if (!reader.ok) return reader
  if (text === null) return err({ kind: 'refused', message: m.runs.unreadableFile, problems: [] })
  const read = reader.value.parseJson(file.name, text)
  return read.ok ? ok(read.value) : err({ kind: 'refused', message: noJson, problems: read.error })
}
