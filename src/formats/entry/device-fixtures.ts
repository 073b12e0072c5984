import { type BrokenFile, changed } from '../fixtures.ts'

const at = '2026-05-04T15:30:00.000Z'
const hash = 'a'.repeat(64)

const idOf = (n: number): string => `0190a1b2-000${n}-7000-8000-000000000000`

const entry = (n: number, kind: string, body: unknown, schemaVersion = 1) => ({
  ...{ id: idOf(n), run: idOf(0), kind, schemaVersion, author: 'R. Quist', device: 'phone' },
  ...{ capturedAt: at, supersedes: null, body },
})

const signed = { name: 'J. Okafor', role: 'inspector', recordHash: hash, acceptance: 'acceptable', unproven: [] }
const drawn = [
  [
    [0.1, 0.2],
    [0.4, 0.1],
  ],
]

const typed = { signature: { kind: 'typed' }, readings: ['0190a1b2-0001'], statement: null }

/** One of each kind, and a signature in each of its versions. */
const entries = [
  entry(1, 'reading', { id: idOf(1), of: 'post-3/rail-height', value: '31 in', by: 'R. Quist', at }),
  entry(2, 'photo', {
    ...{ sha256: hash, type: 'image/jpeg', bytes: 4, width: 2, height: 1, takenAt: at, of: null },
    position: { latitude: 43.1, longitude: -89.5, accuracy: 12, fixedAt: at },
    cameraPosition: { latitude: 43.1, longitude: -89.5 },
    ...{ drawnOn: null, note: null },
  }),
  entry(3, 'sign-off', { ...signed, strokes: drawn, upTo: idOf(1), statement: null }),
  entry(4, 'sign-off', { ...signed, signature: { kind: 'typed' }, readings: [idOf(1)], statement: null }, 2),
  entry(5, 'day-log', {
    ...{ day: '2026-05-04', done: 'Posts 1 to 3', postsDriven: [1, 2, 3], panelsHung: [], crew: ['R. Quist'] },
    ...{ openEnds: 'none', openEndsNote: null },
  }),
  entry(6, 'locate-ticket', {
    ...{ number: 'A-100', calledOn: '2026-05-01', validFrom: '2026-05-04', validThrough: '2026-05-11' },
    marks: [{ name: 'gas', alongInches: 162 }],
  }),
  entry(7, 'sign-off', { ...signed, acceptance: { kind: 'acceptable' }, ...typed }, 3),
  entry(
    8,
    'sign-off',
    { ...signed, acceptance: { kind: 'acceptable except', setAside: 2, by: ['M. Reyes'] }, ...typed },
    3,
  ),
]

const file = {
  ...{ format: 'lapwise-device/1', device: 'phone', writtenAt: at, entries },
  photos: [{ sha256: hash, type: 'image/jpeg', base64: '/9j/4A==' }],
}

export const validDeviceFiles: readonly unknown[] = [file, { ...file, entries: [], photos: [] }]

const broken = (title: string, path: readonly (string | number)[], value: unknown, problem: string): BrokenFile => ({
  ...{ title, raw: changed(file, path, value), problems: [problem], inSchema: true },
})

export const brokenDeviceFiles: readonly BrokenFile[] = [
  broken('another format', ['format'], 'lapwise-run/1', 'format: expected "lapwise-device/1", found "lapwise-run/1"'),
  broken(
    'an id of another make, which would sort after all others',
    ['entries', 2, 'id'],
    'zzzzzzzz',
    'entries[2].id: expected a UUID of version 7 in lower case (RFC 9562), found "zzzzzzzz"',
  ),
  {
    ...broken(
      'an id that nobody counted',
      ['entries', 2, 'id'],
      'ffffffff-ffff-7fff-bfff-ffffffffffff',
      'entries[2].id: expected an id that counts on from those of its run, found "ffffffff-ffff-7fff-bfff-ffffffffffff"',
    ),
    inSchema: false,
  },
  broken(
    'a run named with NUL',
    ['entries', 2, 'run'],
    'a\u0000b',
    'entries[2].run: expected a name without control characters, found "a\\u0000b"',
  ),
  broken('no device', ['device'], undefined, 'device: expected a text, found nothing'),
  broken(
    'a kind that there is not',
    ['entries', 0, 'kind'],
    'photograph',
    'entries[0].kind: expected "run" or "reading" or "photo" or "sign-off" or "day-log" or "locate-ticket", found "photograph"',
  ),
  broken(
    'a version that there is not',
    ['entries', 4, 'schemaVersion'],
    2,
    'entries[4].schemaVersion: expected 1, found 2',
  ),
  broken(
    'a signature that is neither drawn nor typed',
    ['entries', 3, 'body', 'signature', 'kind'],
    'stamped',
    'entries[3].body.signature.kind: expected "drawn" or "typed", found "stamped"',
  ),
  broken(
    'a drawn signature without a stroke',
    ['entries', 2, 'body', 'strokes'],
    [],
    'entries[2].body.strokes: expected a list that is not empty, found an empty list',
  ),
  broken(
    "a signature that set something aside in nobody's name",
    ['entries', 7, 'body', 'acceptance', 'by'],
    [],
    'entries[7].body.acceptance.by: expected a list that is not empty, found an empty list',
  ),
  broken(
    'a signature of an acceptance that there is not',
    ['entries', 6, 'body', 'acceptance', 'kind'],
    'fine',
    'entries[6].body.acceptance.kind: expected "acceptable" or "not acceptable" or "not yet known" or "acceptable except", found "fine"',
  ),
  broken(
    'a day that is none',
    ['entries', 4, 'body', 'day'],
    '2026-02-30',
    'entries[4].body.day: expected a date such as 2017-03-15, found "2026-02-30"',
  ),
  broken(
    'open ends that are not said',
    ['entries', 4, 'body', 'openEnds'],
    'perhaps',
    'entries[4].body.openEnds: expected "none" or "protected" or "exposed", found "perhaps"',
  ),
  broken(
    'a position off the earth',
    ['entries', 1, 'body', 'position', 'latitude'],
    91,
    'entries[1].body.position.latitude: expected a value of at most 90, found 91',
  ),
  broken(
    'a hash that is none',
    ['photos', 0, 'sha256'],
    'abc',
    'photos[0].sha256: expected a sha256 in lower-case hexadecimal, found "abc"',
  ),
  broken(
    'a field that there is not',
    ['photos', 0, 'name'],
    'x.jpg',
    'photos[0].name: expected no field named "name", found "x.jpg"',
  ),
]
