import { err, ok, type Result } from '../core/result.ts'
import type { PhotoHashes } from '../documents/photo-lines.ts'
import { documentWords } from '../documents/words/document-words.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { PacketPurpose } from '../protocol/packet-purposes.ts'
import type { Print } from '../words/print.ts'
import type { JudgedRun } from './judge-readings.ts'
import { lineUnit, type PacketMaker, packetMakers } from './packet-makers.ts'
import type { PacketOptions } from './packet-options.ts'
import { type SoundPhotos, soundPhotos } from './packet-photos.ts'
import { pinned } from './pin-run.ts'
import { type PlacedRun, placeRun, type RunPlace } from './place-run.ts'
import { hashRule, photosText, recordText } from './record-hash.ts'
import { type NamedPhoto, photoHashes, photosNamed } from './record-photos.ts'
import { quantityList } from './write-exports.ts'

export interface PacketFile {
  /** With `/` between folder and file. */
  readonly name: string
  readonly bytes: Uint8Array
}

interface LeftOut {
  readonly what: string
  readonly why: string
}

type Problems = readonly InputProblem[]

/**
 * Every document of a run, with run and readings as the record's hash takes them and a manifest that names each file by
 * its SHA-256. The same run, readings and options give the same bytes, workbook and GeoPackage too.
 */
export async function writePacket(
  given: JudgedRun,
  options: PacketOptions,
): Promise<Result<readonly PacketFile[], Problems>> {
  const { printedAt, author, sha256, sources, place, entries } = options
  const judged = pinned(given, sha256)
  const named = photosNamed(judged.log, judged.freeFindings, entries.photos)
  const quantities = quantityList(sources.run, judged, options.pay, options.print)
  const staked = placeRun(sources.run, judged, place?.run ?? ownLine(judged))
  const looked = await soundPhotos(named, options.photos, options.absentPhotos, sources.readings)
  const problems = [
    ...(quantities.ok ? [] : quantities.error),
    ...(staked.ok || place === null ? [] : staked.error),
    ...(looked.ok ? [] : looked.error),
  ]
  if (!quantities.ok || !looked.ok || problems.length > 0) return err(problems)

  const stakes = staked.ok ? staked.value : null
  const photos = looked.value.photos ?? []
  const hashes = photoHashes(named, new Map(photos.map(({ photo, bytes }) => [photo, sha256(bytes)])))
  const hash = sha256(recordText(judged, hashes, entries.photoStrokes))
  const all = packetMakers(judged, {
    ...options,
    photos: looked.value.photos,
    hash,
    quantities: quantities.value,
    placed: stakes,
  })
  const beforeReadings = judged.log.length === 0 && judged.freeFindings.length === 0
  const isFor = (purpose: PacketPurpose): boolean => options.purpose === null || options.purpose === purpose
  const isAsked = ({ purposes }: PacketMaker): boolean => purposes.some(isFor)
  const isTrue = ({ name }: PacketMaker): boolean =>
    !beforeReadings || (name !== 'as-built.pdf' && (!ofRecord.includes(name) || options.purpose === 'record'))
  const makers = all.filter((one) => isAsked(one) && isTrue(one))
  const count = makers.length + 1
  const files: PacketFile[] = []
  for (const [i, { name, make }] of makers.entries()) {
    await options.progress({ file: name, number: i + 1, of: count })
    const made = await make()
    if (!made.ok) return made
    files.push({ name, bytes: bytesOf(made.value) })
  }
  const manifest = {
    format: 'lapwise-packet/1',
    purpose: options.purpose,
    run: judged.run.name,
    acceptance: options.print.say(judged.judgement.acceptance),
    recordHash: hash,
    hashRule,
    photosHash: sha256(photosText(hashes)),
    photos: photosOf(hashes, photos),
    printedAt,
    author,
    program: { name: 'Lapwise', version: options.version },
    pay: { boundaries: quantities.value.boundaries, rounding: quantities.value.roundingText },
    files: files.map(({ name, bytes }) => ({ name, bytes: bytes.length, sha256: sha256(bytes) })),
    leftOut: [
      ...otherFiles(
        all.filter((one) => !isAsked(one)),
        options,
      ),
      ...unprovenFiles(
        all.filter((one) => isAsked(one) && !isTrue(one)),
        options,
      ),
      ...(isFor('survey') ? unplaced(options, staked.ok ? null : staked.error) : []),
      ...(isFor('record') ? photosLeftOut(judged, options, looked.value.unread) : []),
    ],
    notes: stakes === null ? [] : notesOn(stakes, place !== null, options.print),
  }
  await options.progress({ file: 'manifest.json', number: count, of: count })
  return ok([...files, { name: 'manifest.json', bytes: bytesOf(`${JSON.stringify(manifest, null, 2)}\n`) }])
}

/** What the hash takes in of each photo, and where the packet has it. */
function photosOf(hashes: PhotoHashes, photos: readonly NamedPhoto[]) {
  const files = new Map(photos.map(({ photo, file }) => [photo, `photos/${file}`]))
  return Object.entries(hashes).map(([name, sha256]) => ({ name, sha256, file: files.get(name) ?? null }))
}

const bytesOf = (content: string | Uint8Array): Uint8Array =>
  typeof content === 'string' ? new TextEncoder().encode(content) : content

/** The line of the run itself as a straight road without coordinates. */
const ownLine = (judged: JudgedRun): RunPlace => ({ offset: 0, road: null, unit: lineUnit(judged) })

function notesOn({ breaksBeyond }: PlacedRun, hasRoad: boolean, print: Print): readonly string[] {
  const words = documentWords(print).manifest
  return [
    ...(hasRoad ? [] : [words.lineNote('stakes.csv', 'run.ifc')]),
    ...breaksBeyond.map((one) => words.roadBeyond(print.say(one))),
  ]
}

/** What is made for others than this packet. */
function otherFiles(makers: readonly PacketMaker[], { purpose, print }: PacketOptions): readonly LeftOut[] {
  if (purpose === null || makers.length === 0) return []
  return [{ what: namesOf(makers), why: documentWords(print).manifest.madeFor(purpose) }]
}

/** What tells the record; before anything was read it is made only for who asks for it. */
const ofRecord = ['record.pdf', 'record.json', 'summary.pdf']

/** What would state that something was looked at, before anything was. */
const unprovenFiles = (makers: readonly PacketMaker[], { print }: PacketOptions): readonly LeftOut[] =>
  makers.length === 0 ? [] : [{ what: namesOf(makers), why: documentWords(print).manifest.nothingRead }]

const namesOf = (makers: readonly PacketMaker[]): string => makers.map(({ name }) => name).join(', ')

/** Stakes, model and maps that the place of the run does not allow. */
function unplaced({ place, print }: PacketOptions, unstaked: Problems | null): readonly LeftOut[] {
  const words = documentWords(print).manifest
  const unstakedFor = ({ place, expected }: InputProblem): string => words.cannotBeStaked(place, print.say(expected))
  return [
    ...(unstaked === null ? [] : [{ what: 'stakes.csv, run.ifc', why: unstaked.map(unstakedFor).join('; ') }]),
    ...(place === null ? [{ what: 'stakes.xml, stakes.dxf', why: words.noRoad }] : []),
    ...((place?.system ?? null) === null ? [{ what: 'run.geojson, run.gpkg', why: words.noReferenceSystem }] : []),
  ]
}

function photosLeftOut(
  judged: JudgedRun,
  { photos, entries, print }: PacketOptions,
  unread: SoundPhotos['unread'],
): readonly LeftOut[] {
  const words = documentWords(print).manifest
  const given = new Set(photos?.map(({ photo }) => photo))
  const absent = photosNamed(judged.log, judged.freeFindings, entries.photos).filter((name) => !given.has(name))
  return [
    ...unread.map(({ photo, why }) => ({ what: words.photo(print.theirs(photo)), why: print.say(why) })),
    ...(absent.length > 0
      ? [
          {
            what: words.photos(absent.map(print.theirs).join(', ')),
            why: photos === null ? words.noPhotos : words.photosElsewhere,
          },
        ]
      : []),
  ]
}
