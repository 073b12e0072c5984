import { Fragment } from 'preact'
import { useMemo } from 'preact/hooks'
import { nameOf } from '../../core/hardware/sheet-text.ts'
import { kindOfPost } from '../../core/layout/kind-of-post.ts'
import type { Layout } from '../../core/layout/layout.ts'
import { sheetOf } from '../../core/layout/sheet-of.ts'
import type { RunModel } from '../../core/requirements/run-model.ts'
import type { MadeOf } from '../../formats/run/made-of.ts'
import { explainLayout } from '../../operations/explain-layout.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { layOutRun } from '../../operations/lay-out-run.ts'
import { sheetsInUse } from '../../operations/sheets-in-use.ts'
import { theirNames } from '../../words/their-names.ts'
import { alongWords } from '../entry/reading-words.ts'
import { m, printIn, say } from '../messages.ts'
import { FoldByItself } from '../parts/fold.tsx'
import { LaterPart, partOf } from '../parts/later-part.tsx'
import { ProblemList } from '../parts/trouble-note.tsx'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { editPath, sheetPath } from '../route.ts'

const madeOfPane = partOf(() => import('../site/made-of-pane.tsx'))

/** How many lawful runs are shown besides the chosen one. */
const othersShown = 4

/** The chosen layout piece by piece, why it is so, and what else could have been. */
export function LayoutPane({ judged, run }: { readonly judged: JudgedRun; readonly run: string }) {
  const { layout } = judged.model
  const { units } = judged.run
  const laid = useMemo(() => layOutRun(judged.run.name, judged.run, othersShown + 1), [judged.run])
  return (
    <section class="sheet">
      <p>
        <a class="button main" href={editPath(run)}>
          {m.layout.edit}
        </a>
      </p>
      <p>
        {m.layout.sheets}{' '}
        {sheetsInUse(judged.model).map((sheet, i) => (
          <Fragment key={sheet.id}>
            {i > 0 && ', '}
            <a href={sheetPath(sheet.id)}>{say(nameOf(sheet), units)}</a>
          </Fragment>
        ))}
      </p>
      {judged.run.madeOf !== undefined && <MadeOfFold madeOf={judged.run.madeOf} units={units} />}
      <h2>{m.layout.why}</h2>
      <List items={explainLayout(layout, judged.request).map((one) => say(one, units))} />
      {laid.ok ? (
        <>
          <Others chosen={layout} layouts={laid.value.layouts} more={laid.value.more} units={units} />
          <h2>{m.layout.refused}</h2>
          {laid.value.refused.length === 0 ? (
            <p>{m.layout.noRefused}</p>
          ) : (
            <List items={laid.value.refused.map((one) => say(one, units))} />
          )}
        </>
      ) : (
        <ProblemList problems={laid.error} />
      )}
      <Pieces model={judged.model} units={units} />
    </section>
  )
}

function MadeOfFold({ madeOf, units }: { readonly madeOf: MadeOf; readonly units: 'us' | 'metric' }) {
  const failing = madeOf.checks.filter(({ verdict }) => verdict === 'fails').length
  return (
    <FoldByItself
      level={2}
      title={m.layout.madeOf}
      beside={failing > 0 && <VerdictMark word="fails" count={failing} />}
      opensFirst={false}
    >
      {() => (
        <LaterPart part={madeOfPane} title={m.layout.madeOf}>
          {({ MadeOfPane }) => <MadeOfPane madeOf={madeOf} units={units} />}
        </LaterPart>
      )}
    </FoldByItself>
  )
}

/** Pieces in one table: a run with more of them is folded by stretches. */
const inTable = 60

function Pieces({ model, units }: { readonly model: RunModel; readonly units: 'us' | 'metric' }) {
  const pieces = piecesOf(model, units)
  const words = (along: number): string => (units === 'us' ? printIn(null).feetInches(along) : alongWords(along, units))
  const stretches = Array.from({ length: Math.ceil(pieces.length / inTable) }, (_, i) =>
    pieces.slice(i * inTable, (i + 1) * inTable),
  )
  return (
    <>
      <h2>{m.run.withCount(m.layout.pieces, pieces.length)}</h2>
      <div>
        {stretches.map((stretch, i) => (
          <FoldByItself
            key={stretch[0]!.name}
            level={3}
            title={m.layout.fromTo(words(stretch[0]!.along), words(stretch.at(-1)!.along))}
            beside={<b class="count">{stretch.length}</b>}
            opensFirst={i === 0}
          >
            {() => (
              <table class="pieces">
                <thead>
                  <tr>
                    <th scope="col">{m.layout.along}</th>
                    <th scope="col">{m.layout.piece}</th>
                    <th scope="col">{m.layout.what}</th>
                  </tr>
                </thead>
                <tbody>
                  {stretch.map(({ along, name, what }) => (
                    <tr key={name + along}>
                      <td class="number">{words(along)}</td>
                      <th scope="row">{name}</th>
                      <td>{what}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            )}
          </FoldByItself>
        ))}
      </div>
    </>
  )
}

interface OthersProps {
  readonly chosen: Layout
  readonly layouts: readonly Layout[]
  readonly more: boolean
  readonly units: 'us' | 'metric'
}

function Others({ units, ...props }: OthersProps) {
  const others = props.layouts
    .filter((layout) => `${panelsOf(layout)}` !== `${panelsOf(props.chosen)}`)
    .slice(0, othersShown)
  return (
    <>
      <h2>{m.layout.others}</h2>
      {others.length === 0 ? (
        <p>{m.layout.noOthers}</p>
      ) : (
        <List
          items={others.map((layout) => m.layout.panels(panelsOf(layout).map(printIn(units).feetInches).join(', ')))}
        />
      )}
      {props.more && <p>{m.layout.more}</p>}
    </>
  )
}

const panelsOf = ({ panels }: Layout): readonly number[] => panels.map(({ inches }) => inches)

const List = ({ items }: { readonly items: readonly string[] }) => (
  <ul>
    {items.map((item) => (
      <li key={item}>{item}</li>
    ))}
  </ul>
)

interface Piece {
  readonly along: number
  readonly name: string
  readonly what: string
}

function piecesOf(model: RunModel, units: 'us' | 'metric'): readonly Piece[] {
  const { posts, panels, splices, omitted } = model.layout
  const print = printIn(units)
  const pieces: Piece[] = [
    ...panels.map(({ number, fromInches, inches, role, nested }) => ({
      along: fromInches,
      name: m.layout.panel(number),
      what: [print.feetInches(inches), m.layout.role[role], ...(nested ? [m.layout.nested] : [])].join(', '),
    })),
    ...posts.map((post) => ({
      along: post.alongInches,
      name: m.layout.post(post.number),
      what: `${say(kindOfPost(post, sheetOf(model, post.unit)), units)}, ${post.block ? m.layout.block : m.layout.noBlock}`,
    })),
    ...splices.map(({ number, alongInches, position }) => ({
      along: alongInches,
      name: m.layout.splice(number),
      what: m.layout.position[position],
    })),
    ...omitted.map(({ alongInches, obstructions }) => ({
      along: alongInches,
      name: m.layout.omitted,
      what: theirNames(obstructions, print),
    })),
  ]
  return pieces.sort((a, b) => a.along - b.along)
}
