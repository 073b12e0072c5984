import { err, ok } from '../../core/result.ts'
import type { Entry } from '../../formats/entry/entry-kinds.ts'
import {
  entriesPath,
  packetOfRunPath,
  packetPath,
  photoPath,
  recordPath,
  sheetDocumentPath,
  storedPhotosPath,
} from '../../protocol/addresses.ts'
import type { EntryAnswers, EntryPage } from '../../protocol/entries.ts'
import type { ErrorAnswer } from '../../protocol/error-answer.ts'
import type { PacketLine, PacketStep, PacketWish } from '../../protocol/packets.ts'
import { mostPhotosAsked, type PhotosStored } from '../../protocol/photos.ts'
import { heardAnswer, heardError } from './heard.ts'
import type { HeardAnswer, Page, ServerEntry } from './merge-entries.ts'
import { d } from './messages.ts'
import type { Answer, RecordWish, SheetDocumentWish, Trouble } from './run-source.ts'

/** Entries in one request: about half of what the server takes at most. */
export const batchSize = 500

/** How long an answer may take, milliseconds: our judgement; a batch of readings over a slow network is far below. */
const usualPatience = 30_000

/** The same for a packet, of which the server tells file by file how far it is. */
const packetPatience = 300_000

/** A page of the server's order, and what stands where the device had read to. */
export interface FetchedPage extends Page {
  readonly more: boolean
  /** Id of the entry at the device's cursor, as the server has it. */
  readonly at: string | null
}

/** Hands entries in; one answer for each. */
export async function sendEntries(entries: readonly Entry[]): Answer<readonly HeardAnswer[]> {
  const answer = await ask(entriesPath, { method: 'POST', json: { entries } })
  if (!answer.ok) return answer
  const said = await json<EntryAnswers>(answer.value)
  if (!said.ok) return said
  return ok(await Promise.all(said.value.answers.map(heardAnswer)))
}

export async function fetchEntries(after: number): Answer<FetchedPage> {
  const answer = await ask(`${entriesPath}?${new URLSearchParams({ after: `${after}`, limit: `${batchSize}` })}`)
  if (!answer.ok) return answer
  const said = await json<EntryPage>(answer.value)
  if (!said.ok) return said
  const { entries, more, cursor, cursorId, at } = said.value
  return ok({
    ...{ after, more, at },
    cursor: { seq: cursor, id: cursorId },
    // A kind that this page does not know is kept as it came; it is shown nowhere.
    entries: entries.map(({ storedAt: _, ...entry }) => entry as ServerEntry),
  })
}

export async function hasPhoto(sha256: string): Answer<boolean> {
  const answer = await ask(photoPath(sha256), { method: 'HEAD' })
  if (answer.ok) return ok(true)
  return answer.error.status === 404 ? ok(false) : answer
}

/** Which of these photos the server lists as stored; all that it is asked of is told, or nothing. */
export async function storedPhotos(hashes: readonly string[]): Answer<ReadonlySet<string>> {
  const stored = new Set<string>()
  for (let from = 0; from < hashes.length; from += mostPhotosAsked) {
    const photos = hashes.slice(from, from + mostPhotosAsked)
    const answer = await ask(storedPhotosPath, { method: 'POST', json: { photos } })
    if (!answer.ok) return answer
    const said = await json<PhotosStored>(answer.value)
    if (!said.ok) return said
    for (const hash of said.value.stored) stored.add(hash)
  }
  return ok(stored)
}

/** Null when the server does not have it. */
export async function fetchPhoto(sha256: string): Answer<Blob | null> {
  const answer = await ask(photoPath(sha256))
  if (answer.ok) return blob(answer.value)
  return answer.error.status === 404 ? ok(null) : answer
}

export async function fetchRecord(run: string, { page, author, language }: RecordWish): Answer<Blob> {
  const query = new URLSearchParams({ page, author, language })
  const answer = await ask(`${recordPath(encodeURIComponent(run))}?${query}`)
  return answer.ok ? blob(answer.value) : answer
}

/** A document of hardware sheets, to be printed. */
export async function fetchSheetDocument(wish: SheetDocumentWish): Answer<Blob> {
  const answer = await ask(sheetDocumentPath, { json: wish })
  return answer.ok ? blob(answer.value) : answer
}

/**
 * The packet of a run as a ZIP file. The server tells in lines what it is making, and at the end where the file is.
 * @param making  told each file as it is begun
 */
export async function fetchPacket(run: string, wish: PacketWish, making: (step: PacketStep) => void): Answer<Blob> {
  const answer = await ask(packetOfRunPath(encodeURIComponent(run)), { json: wish, patience: packetPatience })
  if (!answer.ok) return answer
  const told = await lastLine<PacketLine>(answer.value, (line) => {
    if ('making' in line) making(line.making)
  })
  if (!told.ok) return told
  if ('error' in told.value) return err({ kind: 'refused', ...(await heardError(told.value.error)) })
  if (!('packet' in told.value)) return err(unreachable)
  const file = await ask(packetPath(told.value.packet))
  return file.ok ? blob(file.value) : file
}

/** The last of the lines of JSON that an answer consists of; `each` is told every one as it comes. */
async function lastLine<T>(response: Response, each: (line: T) => void): Answer<T> {
  let last: T | null = null
  const take = (text: string): void => {
    last = JSON.parse(text) as T
    each(last)
  }
  try {
    let rest = ''
    const letters = new TextDecoder()
    const reader = response.body!.getReader()
    for (;;) {
      const { done, value } = await reader.read()
      if (done) break
      const lines = (rest + letters.decode(value, { stream: true })).split('\n')
      rest = lines.pop()!
      for (const line of lines) take(line)
    }
  } catch {
    return err(unreachable)
  }
  return last === null ? err(unreachable) : ok(last)
}

interface Request {
  /** How long the whole answer may take, milliseconds. */
  readonly patience?: number
  readonly method?: 'POST' | 'HEAD'
  readonly json?: unknown
}

const unreachable: Trouble = {
  kind: 'unreachable',
  get message() {
    return d.trouble.unreachable
  },
  problems: [],
}

async function ask(address: string, { method = 'POST', json: sent, patience = usualPatience }: Request = {}) {
  let response: Response
  try {
    response = await fetch(address, {
      signal: AbortSignal.timeout(patience),
      ...(sent === undefined
        ? { method: method === 'HEAD' ? 'HEAD' : 'GET' }
        : { method, headers: { 'content-type': 'application/json' }, body: JSON.stringify(sent) }),
    })
  } catch {
    return err({ ...unreachable, status: 0 })
  }
  return response.ok ? ok(response) : err({ ...(await troubleOf(response)), status: response.status })
}

/** A connection that breaks within an answer is one that gave none. */
async function json<T>(response: Response): Answer<T> {
  try {
    return ok((await response.json()) as T)
  } catch {
    return err(unreachable)
  }
}

async function blob(response: Response): Answer<Blob> {
  try {
    return ok(await response.blob())
  } catch {
    return err(unreachable)
  }
}

async function troubleOf(response: Response): Promise<Trouble> {
  if (response.status === 401) return { kind: 'not let in', message: d.trouble.notLetIn, problems: [] }
  const kind = response.status >= 500 ? 'fault' : 'refused'
  const said = (await response.json().catch(() => null)) as Partial<ErrorAnswer> | null
  const error = said?.error
  return { kind, ...(error ? await heardError(error) : { message: d.trouble.answered(response.status), problems: [] }) }
}
