import { createHash } from 'node:crypto'
import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { filesOfPhoto, type NamedPhoto, photosNamed } from '../../operations/packet-photos.ts'
import { writePacket } from '../../operations/write-packet.ts'
import { BadInput, badWords, type Command } from '../command.ts'
import { loadJudged, readText, say, soundValue } from '../io.ts'
import { expectFree, writeFolder } from '../write-folder.ts'

const pages = ['letter', 'tabloid', 'A4', 'A3'] as const

export const packetCommand: Command = {
  name: 'packet',
  words: 'RUN.json READINGS.json -o OUT/',
  summary:
    'Everything the crew, the engineer and the archive need: crew sheet, record, as-built, quantities, stakes, drawings.',
  help: [
    '  -o OUT          a folder that is not there yet, or an empty one; it appears whole or not at all',
    '  --photos DIR    where the photos are that the readings name; each one has to be there',
    '  --ticket TEXT   the utility ticket, for the crew sheet',
    '  --page PAGE     letter (the default), tabloid, A4 or A3',
    'Pays from splice to splice, to 0.1 ft. manifest.json names every file by its SHA-256 and says what was left out.',
    'A packet cut off while it is written stays beside OUT as OUT.….partial, which can be deleted.',
  ].join('\n'),
  run: async (words, options) => {
    const [run, readings, ...rest] = words
    const { output, photos, ticket } = options
    // The packet takes both files in as they are, so that they have to be files.
    if (run === undefined || readings === undefined || rest.length > 0 || output === null || words.includes('-'))
      throw badWords('packet RUN.json READINGS.json -o OUT/', words.join(' '))
    const page = pages.find((one) => one === (options.page ?? 'letter'))
    if (page === undefined) throw badWords(`--page ${pages.join(', ')}`, options.page!)
    await expectFree(output)
    const texts = [await readText(run), await readText(readings)]
    const judged = await loadJudged(run, readings)
    const [runBytes, readingsBytes] = [await readFile(run), await readFile(readings)]
    if (runBytes.toString('utf8') !== texts[0] || readingsBytes.toString('utf8') !== texts[1])
      throw badWords('files that nobody changes while the packet is made', `${run} or ${readings} changed`)
    const packet = await writePacket(judged, {
      page,
      printedAt: new Date().toISOString(),
      author: '',
      version: await programVersion(),
      sha256: (content) => createHash('sha256').update(content).digest('hex'),
      sources: {
        run: { name: run, bytes: runBytes },
        readings: { name: readings, bytes: readingsBytes },
      },
      pay: { boundaries: { first: { kind: 'splice' }, second: { kind: 'splice' } }, rounding: '0.1 ft' },
      ticket,
      place: null,
      absentPhotos: 'problem',
      photos: photos === null ? null : await readPhotos(photosNamed(judged.readings), photos),
      progress: ({ file, number, of }) => say(`making ${file}, ${number} of ${of}`),
    })
    const files = soundValue(packet)
    await writeFolder(output, files)
    say(`wrote ${files.length} files to ${output}`)
    return 0
  },
}

async function programVersion(): Promise<string> {
  const text = await readFile(new URL('../../../package.json', import.meta.url), 'utf8')
  return (JSON.parse(text) as { readonly version: string }).version
}

/** The photos of `names` that are in the folder; which are missing, the packet says. */
async function readPhotos(names: readonly string[], folder: string): Promise<readonly NamedPhoto[]> {
  const listed = await readdir(folder, { withFileTypes: true }).catch((cause: NodeJS.ErrnoException) => {
    if (cause.code !== 'ENOENT' && cause.code !== 'ENOTDIR' && cause.code !== 'EACCES') throw cause
    throw new BadInput([{ file: folder, place: '', expected: 'a folder that can be read', found: cause.code }])
  })
  const files = listed.filter((entry) => !entry.isDirectory()).map(({ name }) => name)
  const found = names.map((photo) => ({ photo, files: filesOfPhoto(photo, files) }))
  const unsure = found.filter((one) => one.files.length > 1)
  if (unsure.length > 0)
    throw new BadInput(
      unsure.map((one) => ({
        file: folder,
        place: `photo ${JSON.stringify(one.photo)}`,
        expected: 'one picture of that name',
        found: one.files.join(', '),
      })),
    )
  return Promise.all(
    found.flatMap(({ photo, files: [file] }) =>
      file === undefined ? [] : [readFile(join(folder, file)).then((bytes) => ({ photo, file, bytes }))],
    ),
  )
}
