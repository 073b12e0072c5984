import type { PaperName } from '../../core/units/paper-names.ts'
import { papers } from '../../drawing/paper.ts'
import { m } from '../messages.ts'

interface Props {
  readonly page: PaperName
  readonly choose: (page: PaperName) => void
}

/** The paper that a document is set for. */
export const PageField = ({ page, choose }: Props) => (
  <label>
    <span>{m.record.page}</span>
    <select value={page} onChange={({ currentTarget }) => choose(currentTarget.value as PaperName)}>
      {(Object.keys(papers) as PaperName[]).map((name) => (
        <option key={name} value={name}>
          {m.record.papers[name]}
        </option>
      ))}
    </select>
  </label>
)
