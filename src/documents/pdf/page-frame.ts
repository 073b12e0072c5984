import type { PaperName } from '../../core/units/paper-names.ts'
import type { Drawing } from '../../drawing/drawing.ts'
import { type PageLie, papers } from '../../drawing/paper.ts'
import { writeSvg } from '../../drawing/svg/write-svg.ts'
import { verdictLayers, verdictOrder, verdictSign } from '../../drawing/verdict-signs.ts'
import type { Print } from '../../words/print.ts'
import { instantOf } from '../printed-time.ts'
import { documentWords } from '../words/document-words.ts'
import { printableText } from './printable-text.ts'

/** What a document says at the head and foot of each page and in the file's properties. */
export interface FrameText {
  readonly title: string
  readonly run: string
  readonly printed: string
  readonly printedAt: string
  readonly author: string
  readonly hash: string
}

/** The paper that text stands on; a drawing brings its own. */
export interface TextPaper {
  readonly page: PaperName
  readonly lie: PageLie
}

/** Its size in points. */
export function textPaper({ page, lie }: TextPaper): { readonly width: number; readonly height: number } {
  const { widthPoints: long, heightPoints: short } = papers[page]
  return lie === 'landscape' ? { width: long, height: short } : { width: short, height: long }
}

/** What every document hands to `pageFrame`. */
export function frameData(text: FrameText, { page, lie }: TextPaper, drawings: readonly Drawing[], print: Print) {
  return {
    language: print.language,
    words: documentWords(print).frame,
    paper: textPaper({ page, lie }),
    date: dateParts(text.printedAt),
    drawings: drawings.map((drawing) => drawingData(drawing)),
    signs: Object.fromEntries(verdictOrder.map((verdict) => [verdict, pictureOf(signDrawing(verdict))])),
  }
}

function dateParts(printedAt: string) {
  const [year, month, day, hour, minute, second] = new Date(instantOf(printedAt)).toISOString().split(/[-T:.]/)
  const parts = { year, month, day, hour, minute, second }
  return Object.fromEntries(Object.entries(parts).map(([name, digits]) => [name, Number(digits)]))
}

/** A drawing at its true size on paper, as it lies on the page. */
function drawingData(drawing: Drawing) {
  const { extent, scale } = drawing
  return {
    width: ((extent.maxX - extent.minX) / scale) * 72,
    height: ((extent.maxY - extent.minY) / scale) * 72,
    picture: pictureOf(drawing),
    alt: printableText(`${drawing.title}. ${drawing.description}`),
  }
}

/** As SVG, set in the document's own font, which is the same on every machine. */
const pictureOf = (drawing: Drawing): string =>
  printableText(writeSvg(drawing)).replace(/ font-family="[^"]*"/, ' font-family="Libertinus Serif"')

const signDrawing = (verdict: (typeof verdictOrder)[number]): Drawing => ({
  title: verdict,
  description: verdict,
  extent: { minX: -5.5, minY: -5.5, maxX: 5.5, maxY: 5.5 },
  scale: 72,
  paper: null,
  layers: verdictLayers,
  items: verdictSign(verdict, { x: 0, y: 0 }, 9),
})

/**
 * What all documents share, in the typesetter's language: page, letters, running head and foot, tables, verdict signs,
 * pages for drawings. Beside `frameData` it needs the document's contents as `contents`.
 */
export const pageFrame = `
#let data = json(bytes(sys.inputs.data))
#let doc = data.contents
#let quiet = luma(70)
#let rule = 0.5pt + luma(130)
#let small(body) = text(size: 7pt, fill: quiet, body)
#let shortened(words, most) = {
  let letters = words.clusters()
  if letters.len() > most { letters.slice(0, most - 1).join() + "…" } else { words }
}

#set document(
  title: doc.title + ": " + doc.run,
  author: doc.author,
  date: datetime(..data.date),
)
#set text(
  font: ("Libertinus Serif", "DejaVu Sans Mono"),
  fallback: false,
  size: 9pt,
  lang: data.language,
  hyphenate: false,
  ligatures: false,
  number-width: "tabular",
)
#set par(leading: 0.5em, spacing: 0.7em)

#let running-foot = context {
  set text(size: 7.5pt, fill: quiet)
  grid(
    columns: (1fr, auto),
    [#data.words.printed #shortened(doc.printed, 70).#if doc.hash != "" [ #data.words.hash #doc.hash.slice(0, calc.min(16, doc.hash.len()))]],
    [#data.words.page #counter(page).display() #data.words.of #counter(page).final().first()],
  )
  // In full once, to be copied and compared.
  if counter(page).get().first() == 1 and doc.hash != "" {
    place(dy: 2.5pt, text(size: 5.5pt, font: "DejaVu Sans Mono", doc.hash))
  }
}
#set page(
  width: data.paper.width * 1pt,
  height: data.paper.height * 1pt,
  margin: (x: 40pt, top: 54pt, bottom: 48pt),
  header: {
    set text(size: 7.5pt, fill: quiet)
    grid(columns: (1fr, auto), shortened(doc.run, 90), doc.title)
    v(-4pt)
    line(length: 100%, stroke: rule)
  },
  footer: running-foot,
)

#show title: set text(size: 20pt)
#show heading.where(level: 1): it => block(above: 16pt, below: 7pt, sticky: true, text(size: 12.5pt, it.body))
#show heading.where(level: 2): it => block(above: 10pt, below: 5pt, sticky: true, text(size: 10pt, it.body))
#set table(
  stroke: (x, y) => (top: rule, bottom: rule),
  inset: (x: 4pt, y: 3.5pt),
  fill: none,
)
#show table.cell.where(y: 0): set text(weight: "bold", size: 8pt)

// The verdict's own shape; the word always stands beside it.
#let sign(verdict, size: 9pt) = box(
  baseline: 20%,
  pdf.artifact(image(bytes(data.signs.at(verdict)), format: "svg", height: size)),
)

// Words with what is given in place of its name in braces.
#let fill(words, ..given) = {
  let parts = (words,)
  for (name, value) in given.named() {
    parts = parts.map(part => if type(part) == str { part.split("{" + name + "}").intersperse(value) } else { part }).flatten()
  }
  parts.map(part => if type(part) == int { str(part) } else { part }).join()
}

#let verdict-word(verdict) = data.words.verdicts.at(verdict)

#let heads(..words) = table.header(..words.pos().map(word => table.cell(fill: luma(225), word)))

// What the title block says, where the run has one; a document that is no run's has none.
#let block-of-title = doc.at("titleBlock", default: none)
#let title-block = if block-of-title != none {
  let cells = block-of-title.cells
  if cells.len() > 0 {
    block(above: 8pt, below: 4pt, grid(
      columns: (1fr,) * calc.min(3, cells.len()),
      stroke: rule,
      inset: (x: 5pt, y: 4pt),
      ..cells.map(cell => [#small(cell.name) \\ #cell.value]),
    ))
  }
  for words in block-of-title.revisions { block(above: 4pt, below: 4pt, text(size: 8pt, words)) }
}
// Room for a seal of an inch and a half.
#let seal-room = if block-of-title != none and block-of-title.seal != none {
  box(width: 108pt, height: 108pt, stroke: (thickness: 0.6pt, paint: black, dash: "dashed"), inset: 5pt, small(block-of-title.seal))
}

// A page for each drawing, exactly as large as its paper, so that it prints to scale at 100 %.
#let drawing-pages = {
  for drawing in data.drawings {
    page(
      width: drawing.width * 1pt,
      height: drawing.height * 1pt,
      margin: 0pt,
      header: none,
      footer: none,
      foreground: align(bottom + left, pad(x: 30pt, bottom: 12pt, running-foot)),
      image(
        bytes(drawing.picture),
        format: "svg",
        width: drawing.width * 1pt,
        height: drawing.height * 1pt,
        alt: drawing.alt,
      ),
    )
  }
}

#let not-confirmed-of(size) = box(stroke: 0.7pt + black, inset: (x: 2pt), outset: (y: 1.5pt), text(
  size: size,
  weight: "bold",
  fill: black,
  data.words.notConfirmed))
#let not-confirmed = not-confirmed-of(6.5pt)
`
