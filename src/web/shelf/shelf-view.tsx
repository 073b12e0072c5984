import '../style/shelf.css'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { type Route, shelfPath } from '../route.ts'
import { SheetView } from './sheet-view.tsx'
import { ShelfList } from './shelf-list.tsx'
import { words } from './words.ts'

/** The hardware sheets at hand, or one of them. */
export function ShelfView({ route }: { readonly route: Extract<Route, { view: 'shelf' }> }) {
  const sheets = shippedSheets
  if (route.sheet === null) return <ShelfList sheets={sheets} />
  const sheet = sheets.find(({ id }) => id === route.sheet)
  if (sheet !== undefined) return <SheetView key={sheet.id} sheet={sheet} sheets={sheets} />
  return (
    <section class="sheet">
      <h1>{words().none}</h1>
      <p>
        <a href={shelfPath}>{words().back}</a>
      </p>
    </section>
  )
}
