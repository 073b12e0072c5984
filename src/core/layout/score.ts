import type { LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import type { LayoutScore } from './layout.ts'
import type { UnnamedLayout } from './place-ids.ts'

/** The objective of a layout that was not just solved, counted from its pieces. */
export const scoreOf = (layout: Omit<UnnamedLayout, 'score'>, system: LongitudinalSheet): LayoutScore => ({
  changedPosts:
    layout.omitted.length + layout.posts.filter(({ state }) => state === 'moved' || state === 'special').length,
  oddPanels: layout.panels.filter(
    ({ role, inches }) => role !== 'own' && !system.panels.standard.some((one) => one.inches === inches),
  ).length,
  railInches: layout.panels.reduce((sum, { inches }) => sum + inches, 0),
  pieces: layout.panels.length,
})
