import { useEffect, useMemo, useState } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { canonicalJson } from '../../formats/canonical-json.ts'
import { recall, remember } from '../data/device.ts'
import type { Draft } from '../form/draft.ts'

/** A sheet that is being changed on this device and is not saved as an edition yet. */
interface SheetDraft {
  /** The version that it was begun from; null for one that is new. */
  readonly of: string | null
  /** As it was begun; left out by drafts of before. */
  readonly from?: Draft
  readonly draft: Draft
}

const key = 'sheets-begun'

/** By id of the sheet. */
export const begunSheets = (): Readonly<Record<string, SheetDraft>> =>
  (recall(key) as Readonly<Record<string, SheetDraft>> | null) ?? {}

export function beginSheet(id: string, begun: SheetDraft | null): void {
  const { [id]: _, ...others } = begunSheets()
  remember(key, begun === null ? others : { ...others, [id]: begun })
}

/**
 * What becomes of a sheet, kept on this device with each change; the sheet itself while nothing is changed. A draft is over as soon
 * as `editions` have one that says the same under its version: not when it was handed to the store, which shows it a moment later.
 */
export function useSheetDraft(id: string, saved: HardwareSheet | null, editions: readonly HardwareSheet[]) {
  const [kept, setBegun] = useState(() => begunSheets()[id] ?? null)
  const isOver = useMemo(() => kept !== null && isOneOf(editions, kept.draft), [kept, editions])
  const begun = isOver ? null : kept
  const onShelf = (saved ?? {}) as unknown as Draft
  const draft = begun?.draft ?? onShelf
  const from = begun === null ? onShelf : (begun.from ?? begun.draft)
  const change = (next: (draft: Draft) => Draft): void =>
    setBegun((before) => {
      const after = { of: before?.of ?? saved?.version ?? null, from, draft: next(before?.draft ?? draft) }
      beginSheet(id, after)
      return after
    })
  const drop = (): void => {
    beginSheet(id, null)
    setBegun(null)
  }
  useEffect(() => {
    if (isOver) drop()
  }, [isOver])
  return { draft, from, isBegun: begun !== null, change, drop }
}

/** Whether it is an edition already, in content too. */
export const isOneOf = (editions: readonly HardwareSheet[], draft: Draft): boolean =>
  editions.some(
    (one) => one.id === draft.id && one.version === draft.version && canonicalJson(one) === canonicalJson(draft),
  )
