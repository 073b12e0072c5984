import type { Change } from './run-source.ts'

/** Where runs are kept: those that stand, or those that are practised on, each in a database of its own. */
export type StorePlace = 'runs' | 'practice'

/** What is asked of the page, which alone can tell all that show something and ask the browser for a promise. */
export interface PageEnd {
  changed(change: Change): void
  /** Asks the browser to keep what is here, and says whether it promised. */
  keepStorage(): Promise<boolean>
}
