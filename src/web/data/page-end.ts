import type { Change } from './run-source.ts'

/** What is asked of the page, which alone can tell all that show something and ask the browser for a promise. */
export interface PageEnd {
  changed(change: Change): void
  /** Asks the browser to keep what is here, and says whether it promised. */
  keepStorage(): Promise<boolean>
}
