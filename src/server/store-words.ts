import type { StoreProblem } from '../store/problem.ts'
import type { StoreConfig } from '../store/store.ts'

/** Why a store cannot be had, with the setting that names it. */
export function storeWords(kind: StoreConfig['kind'], problem: StoreProblem): string {
  const setting = kind === 'embedded' ? 'LAPWISE_DATA' : 'DATABASE_URL'
  switch (problem.kind) {
    case 'folder-in-use': {
      const by = problem.pid === null ? 'another process' : `process ${problem.pid}`
      return `${setting}: ${problem.folder} is in use by ${by}; end that one, or set another folder`
    }
    case 'cannot-open':
      return `${setting}: the store in ${problem.place} cannot be opened: ${problem.reason}`
    case 'newer-store':
      return `${setting}: the store was written by a newer Lapwise (version ${problem.storeVersion} of its tables; this one knows ${problem.programVersion})`
  }
}
