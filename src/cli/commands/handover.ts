import type { Carried, LeftOut } from '../../formats/entry/carried.ts'
import { writeDeviceFile } from '../../formats/entry/device-file.ts'
import { photosTold } from '../../formats/entry/photos-told.ts'
import type { HandoverPhoto } from '../../formats/handover/handover-shape.ts'
import { writeHandover } from '../../formats/handover/write-handover.ts'
import { printProblem } from '../../formats/input-problem.ts'
import { sha256 } from '../../store/sha256.ts'
import { BadInput, badWords, type Run } from '../command.ts'
import { loadCarried, readPhoto } from '../device-file.ts'
import { words as inWords, note, print, printJson, say, soundValue, writeWhole } from '../io.ts'

const asked = 'handover FILE [--run ID] [-o OUT.zip | OUT.json]'

export const handover: Run = async (args, { output, run, json }) => {
  const [file, ...rest] = args
  if (file === undefined || rest.length > 0) throw badWords(asked, args.join(' '))
  const carried = ofRun(await loadCarried(file), run)
  const faults = await faultsIn(carried)
  if (output !== null && faults.length > 0) throw new BadInput(faults)
  if (output !== null) {
    if (!/\.(zip|json)$/i.test(output)) throw badWords('-o OUT.zip or -o OUT.json', output)
    await writeWhole(output, /\.json$/i.test(output) ? deviceFile(carried) : handoverFile(carried))
    note(`wrote ${output}`)
    return 0
  }
  const runs = runsIn(carried)
  const lacks = lacksOf(carried)
  const { device, writtenAt, photos } = carried
  if (json) printJson({ device, writtenAt, runs, photos: photos.length, lacks })
  else {
    for (const { name, id, entries } of runs) {
      print(`${name} (${id})`)
      for (const [kind, count] of Object.entries(entries)) print(`  ${kind}: ${count}`)
    }
    print(`${runs.length} runs, ${photos.length} pictures, written ${writtenAt} by ${device}`)
    for (const sha256 of lacks) print(`  not in it: the picture of photo ${sha256}`)
  }
  for (const problem of faults) say(printProblem(problem, inWords))
  return faults.length > 0 ? 2 : 0
}

/** What of it is of one run; of all without an id. */
function ofRun(carried: Carried, run: string | null): Carried {
  if (run === null) return carried
  const entries = carried.entries.filter(({ entry }) => entry.run === run)
  const pictures = new Set(photosTold(entries.map(({ entry }) => entry)).map(({ body }) => body.sha256))
  const isOfRun = ({ raw }: LeftOut): boolean => (raw as { readonly run?: unknown } | null)?.run === run
  return {
    ...carried,
    entries,
    photos: carried.photos.filter(({ sha256 }) => pictures.has(sha256)),
    left: carried.left.filter(isOfRun),
  }
}

/** Hashes of photos that it tells of and whose bytes are not in it. */
function lacksOf({ entries, photos }: Carried): readonly string[] {
  const carried = new Set(photos.map(({ sha256 }) => sha256))
  return photosTold(entries.map(({ entry }) => entry)).flatMap(({ body: { sha256 } }) =>
    carried.has(sha256) ? [] : [sha256],
  )
}

async function faultsIn({ left, photos }: Carried) {
  const faults = left.flatMap(({ problems }) => problems)
  for (const photo of photos) {
    const read = await readPhoto(photo)
    if (!read.ok) faults.push(...read.error)
  }
  return faults
}

function runsIn({ entries }: Carried) {
  const ids = [...new Set(entries.map(({ entry }) => entry.run))]
  return ids.map((id) => {
    const own = entries.filter(({ entry }) => entry.run === id)
    const body = own.findLast(({ entry }) => entry.kind === 'run')?.entry.body as
      | { readonly name?: unknown }
      | undefined
    const counts: Record<string, number> = {}
    for (const { entry } of own) counts[entry.kind] = (counts[entry.kind] ?? 0) + 1
    return { id, name: String(body?.name ?? id), entries: counts }
  })
}

async function bytesOf(photo: Carried['photos'][number]): Promise<Uint8Array> {
  return soundValue(await readPhoto(photo)).bytes
}

async function* handoverFile(carried: Carried): AsyncGenerator<Uint8Array> {
  const entries = carried.entries.map(({ entry }) => entry)
  const pictures = new Map(carried.photos.map((photo) => [photo.sha256, photo]))
  const photos: HandoverPhoto[] = []
  for (const photo of pictures.values()) {
    const { sha256, type } = photo
    photos.push({ sha256, type, bytes: (await bytesOf(photo)).length })
  }
  const { device, writtenAt } = carried
  const runs = runsIn(carried).map(({ id, name }) => ({ id, name }))
  const input = { device, writtenAt, runs, entries, photos, elsewhere: [...lacksOf(carried)] }
  yield* writeHandover(input, ({ sha256 }) => bytesOf(pictures.get(sha256)!), sha256)
}

async function* deviceFile(carried: Carried): AsyncGenerator<string> {
  async function* photos() {
    for (const photo of carried.photos)
      yield { sha256: photo.sha256, type: photo.type, base64: Buffer.from(await bytesOf(photo)).toString('base64') }
  }
  const entries = carried.entries.map(({ entry }) => entry)
  yield* writeDeviceFile(carried, entries, photos())
}
