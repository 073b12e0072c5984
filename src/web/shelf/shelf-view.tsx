import '../style/shelf.css'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { RunSource } from '../data/run-source.ts'
import { useShelf } from '../data/use-shelf.ts'
import { m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { type Route, shelfPath } from '../route.ts'
import { CompareView } from './compare-view.tsx'
import { EditSheetView } from './edit-sheet-view.tsx'
import { begunSheets } from './sheet-drafts.ts'
import { SheetView } from './sheet-view.tsx'
import { ShelfList } from './shelf-list.tsx'
import { TextsView } from './texts-view.tsx'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly route: Extract<Route, { view: 'shelf' }>
}

/** The hardware sheets at hand, or one of them. */
export function ShelfView({ source, route: { sheet: id, part, beside } }: Props) {
  const { own, shelf, again } = useShelf(source)
  if (own.state === 'loading')
    return (
      <p role="status" class="loading">
        {m.page.loading}
      </p>
    )
  if (own.state === 'failed') return <TroubleNote title={words().noOwn} trouble={own.trouble} again={again} />
  const sheets = [...shelf.values()]
  if (id === null) return <ShelfList source={source} own={own.value} sheets={sheets} />
  const saved = shelf.get(id) ?? null
  const editions = [...shippedSheets, ...own.value.flatMap(({ sheet }) => (sheet.ok ? [sheet.value] : []))]
  const props = { source, id, saved, sheets, editions, own: own.value }
  if (saved !== null && part === 'compare') return <CompareView key={id} {...props} saved={saved} beside={beside} />
  const isKnown = saved !== null || begunSheets()[id] !== undefined
  if (isKnown && part === 'edit') return <EditSheetView key={`${id} ${saved?.version}`} {...props} />
  if (isKnown && part === 'texts') return <TextsView key={`${id} ${saved?.version}`} {...props} />
  if (isKnown) return <SheetView key={`${id} ${saved?.version}`} {...props} />
  return (
    <section class="sheet">
      <h1>{words().none}</h1>
      <p>
        <a href={shelfPath}>{words().back}</a>
      </p>
    </section>
  )
}
