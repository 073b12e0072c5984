import type { RecordFile } from '../formats/record/record-file-shape.ts'
import type { Print } from '../words/print.ts'
import type { RecordContents } from './record-contents.ts'

/** The whole record as one JSON file, word by word as it is printed. @param hashRule  by which its hash was made */
export const writeRecordFile = (contents: RecordContents, hashRule: number, { language, units }: Print): string =>
  `${JSON.stringify({ format: 'lapwise-record-contents/1' satisfies RecordFile['format'], language, units, hashRule, ...contents }, null, 2)}\n`
