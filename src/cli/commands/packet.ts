import { noEntries } from '../../formats/entry/run-entries.ts'
import { writeReadings } from '../../formats/readings/readings-file.ts'
import { isZone } from '../../formats/zone-name.ts'
import { deviceRun } from '../../operations/device-run.ts'
import { type NamedPhoto, photosNamed } from '../../operations/record-photos.ts'
import { requireRun } from '../../operations/require-run.ts'
import { writePacket } from '../../operations/write-packet.ts'
import { sha256 } from '../../store/sha256.ts'
import { badWords, type CommandOptions, type Run } from '../command.ts'
import { loadDevice } from '../device-file.ts'
import { judgedBy, loadRun, note, noteProgress, readText, say, shownName, soundValue } from '../io.ts'
import { paperOf, payOf, printingOf, purposeOf, stakeColumnsOf, wordsOf } from '../packet-rules.ts'
import { readPhotos } from '../photo-folder.ts'
import { programVersion } from '../program-version.ts'
import { placeOf } from '../road-place.ts'
import { expectFree, writeFolder } from '../write-folder.ts'

export const packet: Run = async (args, options) => {
  const { output, ticket } = options
  const page = paperOf(options)
  const zone = options.zone ?? Intl.DateTimeFormat().resolvedOptions().timeZone
  if (!isZone(zone)) throw badWords('--zone with a name as America/Denver', zone)
  if (output === null) throw badWords('packet RUN.json -o OUT/', args.join(' '))
  const [pay, stakes, printing] = [payOf(options), stakeColumnsOf(options), printingOf(options)]
  const purpose = purposeOf(options)
  await expectFree(output)
  const { judged, sources, entries, photos } = await readInput(args, options)
  const packet = await writePacket(judged, {
    purpose,
    page,
    lie: options.landscape ? 'landscape' : 'portrait',
    ...printing,
    version: await programVersion(),
    sha256,
    sources,
    pay,
    stakes,
    ticket,
    place: await placeOf(judged.run, options),
    photos,
    absentPhotos: 'problem',
    entries,
    zone,
    print: wordsOf(options, judged.run.units),
    progress: ({ file, number, of }) => noteProgress(`making ${file}, ${number} of ${of}`),
  })
  const files = soundValue(packet)
  if (photos === null && !options['no-photos']) noteNamed(photosNamed(judged.log, judged.freeFindings, entries.photos))
  await writeFolder(output, files)
  note(`wrote ${files.length} files to ${output}`)
  return 0
}

/** Photos that are named and were not asked for are no photos that nobody took. */
function noteNamed(names: readonly string[]): void {
  if (names.length === 0) return
  say(`photos that are named and not in the packet: ${names.join(', ')}; --photos DIR brings them in`)
}

/** Run, readings and what a device recorded. */
async function readInput(args: readonly string[], options: CommandOptions) {
  const [runName, readingsName, ...rest] = args
  const asked = 'packet RUN.json -o OUT/, with READINGS.json or --device FILE'
  if (runName === undefined || rest.length > 0) throw badWords(asked, args.join(' '))
  const run = await loadRun(runName)
  const file = options.device === null ? null : await loadDevice(options.device)
  const device = file && soundValue(deviceRun(options.device!, file, run))
  const required = soundValue(requireRun(shownName(runName), device?.history.run ?? run))
  const readings =
    readingsName === undefined
      ? writeReadings({
          ...{ run: required.run.name, readings: device?.readings ?? [], findings: device?.entries.findings ?? [] },
          photoStrokes: device?.entries.photoStrokes ?? [],
        })
      : await readText(readingsName)
  const name = shownName(readingsName ?? options.device ?? 'readings.json')
  const { judged, file: read } = judgedBy(required, name, readings, device?.history)
  const entries = { ...(device?.entries ?? noEntries), photoStrokes: read.photoStrokes }
  const unread = device?.readings.filter(({ id }) => !judged.log.some((one) => one.id === id)) ?? []
  if (unread.length > 0) say(`${options.device}: ${unread.length} readings of it are not in ${name}`)
  return {
    judged,
    entries,
    sources: { run: shownName(runName), readings: name },
    photos: await findPhotos(
      photosNamed(judged.log, judged.freeFindings, entries.photos),
      file === null ? [] : await file.photos(),
      options,
    ),
  }
}

/** The photos of `names`: those of the device, else those in the folder; null where they are left out. */
async function findPhotos(
  names: readonly string[],
  ofDevice: readonly NamedPhoto[],
  { photos: folder, 'no-photos': noPhotos }: CommandOptions,
): Promise<readonly NamedPhoto[] | null> {
  if (noPhotos || (folder === null && ofDevice.length === 0)) return null
  const found = ofDevice.filter(({ photo }) => names.includes(photo))
  if (folder === null) return found
  const others = names.filter((name) => !found.some(({ photo }) => photo === name))
  return [...found, ...(await readPhotos(others, folder))]
}
