import { expect, type Page, test } from '@playwright/test'
import type { EntryKind } from '../../../src/formats/entry/entry-kinds.ts'
import { entryId } from '../../../src/formats/entry-id.ts'
import { writeRun } from '../../../src/formats/run/write-run.ts'
import { pinRun } from '../../../src/operations/pin-run.ts'
import { entriesPath } from '../../../src/protocol/addresses.ts'
import { changed } from '../../fixtures/broken-files.ts'
import { validDeviceFiles } from '../../fixtures/device-files.ts'
import { demoAsked } from '../../fixtures/three-versions.ts'
import { leftUnsaid, rejoined, unsaidIn } from '../../pseudo/find-unsaid.ts'
import { buildPseudoPage } from '../../pseudo/pseudo-page.ts'
import { textsOn } from './page-texts.ts'
import { openScreen, type Screen, screensOf } from './screens.ts'
import { dropFolder, preparedFolder, type RunningServer, startServer, temporaryFolder } from './serve.ts'

let folder: string
let pageFolder: string
let server: RunningServer
let run: string

test.beforeAll(async () => {
  folder = await preparedFolder()
  pageFolder = await temporaryFolder()
  await buildPseudoPage(pageFolder)
  server = await startServer(folder, '0', {}, pageFolder)
  run = (await (await fetch(`${server.address}/api/runs`)).json()).runs[0].id
})

test.afterAll(async () => {
  await server.stop()
  await dropFolder(folder)
  await dropFolder(pageFolder)
})

// No worker was built with the page that would serve its files.
test.use({ serviceWorkers: 'block' })

/** The language that nobody speaks stands in the place of Spanish. */
const speakNothing = (page: Page): Promise<unknown> =>
  page.addInitScript(() => localStorage.setItem('lapwise/preferences', JSON.stringify({ language: 'es' })))

/** Screens beside those of every walk: each kind of requirement, and sheets of both kinds in every way in which one is shown. */
const further: readonly Screen[] = [
  ...['post-1/stub-height', 'splice-2/lap', 'panel-3/panel-length', 'space-3/spacing'].map((id) => ({
    ...{ name: id, path: `/runs/RUN/walk/${id}` },
  })),
  ...['', '/edit', '/texts'].map((part) => ({ name: 'system', path: `/shelf/w-beam-midspan-31${part}` })),
  { name: 'beside another', path: '/shelf/flared-terminal-31/compare?beside=tangent-terminal-31' },
]

/** The id of a place, rule or sheet: people know these by their names and by what they say. */
const ids = /\b(?:post|space|panel|splice)-\d|‹[a-z0-9]+(?:-[a-z0-9]+)+›/
/** A value that a sheet marks, for who writes the sheet alone. */
const marked = /\{\d/

/** The program's own name stands in the page of last resort as it is, which shares no words with the other. */
const isOurName = (text: string): boolean => text === 'Lapwise'

async function unsaidOn(page: Page, path: string): Promise<readonly string[]> {
  const texts = rejoined(await textsOn(page))
  expect(texts.join('').match(/⟦/g)?.length, path).toBeGreaterThan(5)
  const isUnnamed = (text: string): boolean => ids.test(text) || (marked.test(text) && !path.endsWith('/texts'))
  const unsaid = texts.flatMap(unsaidIn).filter((text) => !isOurName(text))
  return [...texts.filter(isUnnamed), ...unsaid].map((text) => `${path}: ${text}`)
}

/** What is not said on the screens whose addresses begin so. */
async function unsaidAt(page: Page, begin: RegExp): Promise<string[]> {
  const found: string[] = []
  const more = further.map((one) => ({ ...one, path: one.path.replace('RUN', run) }))
  for (const screen of [...screensOf(run), ...more].filter(({ path }) => begin.test(path))) {
    await openScreen(page, server.address, screen)
    await expect(page.locator('html')).toHaveAttribute('lang', 'es')
    if (screen.path.includes('/walk/')) await expect(page.locator('.picture.figure')).toBeVisible()
    // The way back is put there last, once the store was read.
    found.push(...(await unsaidOn(page, screen.path)))
  }
  return found
}

for (const [which, begin] of [
  ['of a run', /^\/runs/],
  ['of shelf and practice', /^\/(shelf|drills)/],
] as const)
  test(`in a language that nobody speaks, no screen ${which} has a text unsaid`, async ({ page }) => {
    await speakNothing(page)
    expect(leftUnsaid(which, await unsaidAt(page, begin))).toEqual([])
  })

test('nor has any other, a part in any state, or what is left out of a file from another device', async ({ page }) => {
  await speakNothing(page)
  const found = await unsaidAt(page, /^\/(?!runs|shelf|drills)/)

  // It shows, among all else, what loads.
  await page.goto(`${server.address}/gallery`)
  await expect(page.locator('.gallery .run-row')).toHaveCount(5)
  found.push(...(await unsaidOn(page, 'gallery')))

  // One value of the file is in no unit that is known: its entry is left out, and held on the device.
  const broken = changed(validDeviceFiles[0], ['entries', 0, 'body', 'value'], '31 furlongs')
  await openScreen(page, server.address, { name: 'bring over', path: '/bring-over' })
  await page
    .locator('main input[type=file]')
    .setInputFiles({ name: 'device.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(broken)) })
  await expect(page.locator('.take-in .problems')).toBeVisible()
  found.push(...(await unsaidOn(page, 'what a file brings')))
  await page.locator('.take-in .main').click()
  await expect(page.locator('.take-in .trouble')).toBeVisible()
  // Beside the file that waits since the walk. All that folds was opened to be read.
  await expect(page.locator('.device-transfer .plain li')).toHaveCount(2)
  found.push(...(await unsaidOn(page, 'what was left of a file')))

  expect(leftUnsaid('other screens', found)).toEqual([])
})

// Names that are also words of the trade, and lengths as people write them.
const own = {
  run: 'Post hill, 1,250 ft',
  project: 'Panel and Bolt, 31 in',
  route: 'Rail Road 31 in',
  obstruction: 'Bolt culvert, 48 in',
  reader: 'Ana Poste',
  note: 'Rail seen 1,250 ft on, 31 in high, poste',
  seen: 'Bolt lies 31 in off, a {31 in} one',
  done: 'Splice of post 3 moved 6 ft 3 in',
  ticket: 'Panel 31 in',
  mark: 'Post office cable, 2 ft deep',
  owner: 'Rail Crew 25 ft',
}

/** A run in metres in which all of it stands, as entries of a device. */
function entriesOfOwn(): readonly object[] {
  const at = '2026-05-04T15:30:00.000Z'
  const asked = demoAsked({
    ...{ name: own.run, project: own.project, units: 'metric' },
    road: { route: own.route, side: 'right', datumStation: '1+200', speed: 90, traffic: 'two-way' },
    obstructions: [{ name: own.obstruction, from: '2 ft', to: '9 ft 6 in' }],
  })
  const [run, reading, finding, ...more] = [1, 2, 3, 4, 5, 6].map((n) =>
    entryId(1_790_000_000_000 + n, new Uint8Array(10)),
  ) as [string, string, string, ...string[]]
  const made = pinRun('run', asked, run)
  if (!made.ok) throw new Error('the run cannot be made', { cause: made.error })
  const entry = (id: string, kind: EntryKind, schemaVersion: number, body: unknown) => ({
    ...{ id, run, kind, schemaVersion, author: own.reader, device: 'phone', capturedAt: at, supersedes: null, body },
  })
  const low = { of: 'post-9/rail-height', value: '27 in', by: own.reader, at, corrects: null, note: own.note }
  const day = { day: '2026-05-04', done: own.done, crew: [own.owner], openEnds: 'none', openEndsNote: null }
  const ticket = { number: own.ticket, calledOn: '2026-05-01', validFrom: '2026-05-04', validThrough: '2026-05-11' }
  return [
    entry(run, 'run', 2, JSON.parse(writeRun(made.value))),
    entry(reading, 'reading', 3, { id: reading, ...low }),
    entry(finding, 'free-finding', 1, { what: 'debris', of: 'post-3', note: own.seen, photos: [] }),
    entry(more[0]!, 'day-log', 2, { ...day, postsDriven: [], panelsHung: [] }),
    entry(more[1]!, 'locate-ticket', 2, {
      ...ticket,
      marks: [{ name: own.mark, from: 'post-1', alongInches: 162 }],
    }),
    entry(more[2]!, 'assignment', 1, { finding: low.of, owner: own.owner, due: null }),
  ]
}

test('what people wrote stands on every screen as they wrote it, in a run in metres too', async ({ page }) => {
  const entries = entriesOfOwn()
  const answered = await fetch(`${server.address}${entriesPath}`, {
    ...{ method: 'POST', headers: { 'content-type': 'application/json' } },
    body: JSON.stringify({ entries }),
  })
  const { answers } = (await answered.json()) as { readonly answers: readonly { readonly outcome: string }[] }
  expect(answers.filter(({ outcome }) => outcome !== 'stored')).toEqual([])
  await speakNothing(page)
  const at = (pane: string): string => `/runs/${(entries[0] as { readonly id: string }).id}${pane}`
  const shown: readonly (readonly [string, (keyof typeof own)[]])[] = [
    ['/', ['run', 'project', 'route', 'reader']],
    [at(''), ['run', 'obstruction']],
    [at('/findings'), ['seen', 'owner']],
    [at('/readings'), ['note', 'reader']],
    [at('/day'), ['done', 'owner', 'ticket', 'mark']],
    [at('/walk/post-9/rail-height'), ['note', 'reader']],
    [at('/sign-off'), ['run']],
    [at('/layout'), ['obstruction']],
  ]
  for (const [path, names] of shown) {
    await openScreen(page, server.address, { name: 'own words', path })
    if (path.endsWith('/day')) await page.locator('.day-entry select').first().selectOption('2026-05-04')
    for (const name of names) await expect.soft(page.locator('body'), path).toContainText(`‹${own[name]}›`)
    const ours = (await textsOn(page)).join('\n').replaceAll(/‹[^‹›]*›/g, '')
    for (const words of Object.values(own)) expect.soft(ours, path).not.toContain(words)
  }
  await openScreen(page, server.address, { name: 'edit', path: at('/edit') })
  await textsOn(page)
  const fields = page.locator('main :is(input, textarea)')
  const held = await fields.evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value))
  expect(held).toEqual(expect.arrayContaining([own.run, own.project, own.route, own.obstruction]))
})
