import { useState } from 'preact/hooks'
import { type PayRounding, payRoundings } from '../../core/quantities/pay-length.ts'
import type { PaperName } from '../../core/units/paper-names.ts'
import { documentFile } from '../../operations/document-file.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { type PacketPurpose, packetPurposes } from '../../protocol/packet-purposes.ts'
import type { PacketStep } from '../../protocol/packets.ts'
import { rememberedVisit } from '../data/device.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { today } from '../fieldwork/days.ts'
import { hasServer } from '../has-server.ts'
import { type Language, language } from '../language.ts'
import { m } from '../messages.ts'
import { download } from '../parts/download.ts'
import { LanguageField } from '../parts/language-field.tsx'
import { LaterPart, partOf } from '../parts/later-part.tsx'
import { PageField } from '../parts/page-field.tsx'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { AcceptanceMark } from '../parts/verdict-sign.tsx'

const documentsHere = partOf(() => import('../transfer/documents-here.tsx'))
const handOver = partOf(() => import('../transfer/hand-over.tsx'))

interface Props {
  readonly source: RunSource
  readonly judged: JudgedRun
  readonly run: string
}

type What = 'record' | 'packet'

type Making =
  | { readonly state: 'idle' }
  | { readonly state: 'making'; readonly what: What; readonly step: PacketStep | null }
  | { readonly state: 'made'; readonly file: string }
  | { readonly state: 'failed'; readonly what: What; readonly trouble: Trouble }

export function RecordPane({ source, judged, run }: Props) {
  const [page, setPage] = useState<PaperName>(judged.run.units === 'metric' ? 'A4' : 'letter')
  const [author, setAuthor] = useState(rememberedVisit().by)
  const [inLanguage, setLanguage] = useState<Language>(language)
  const [making, setMaking] = useState<Making>({ state: 'idle' })
  const [rounding, setRounding] = useState<PayRounding>('0.1 ft')
  const [photos, setPhotos] = useState(true)
  const [purpose, setPurpose] = useState<PacketPurpose | null>(null)
  const make = async (what: What): Promise<void> => {
    const zone = Intl.DateTimeFormat().resolvedOptions().timeZone
    const step = (step: PacketStep | null): void => setMaking({ state: 'making', what, step })
    step(null)
    const answer = await (what === 'record'
      ? source.record(run, { page, author, language: inLanguage })
      : source.packet(run, { purpose, page, author, rounding, photos, zone, language: inLanguage }, step))
    if (!answer.ok) {
      setMaking({ state: 'failed', what, trouble: answer.error })
      return
    }
    const purposeOf = what === 'record' || purpose === null ? what : `packet-${purpose}`
    const file = `${documentFile(judged.run, purposeOf, today())}.${what === 'record' ? 'pdf' : 'zip'}`
    download(answer.value, file)
    setMaking({ state: 'made', file })
  }
  return (
    <section class="sheet">
      <h2>{m.record.title}</h2>
      <p>{m.record.how}</p>
      {hasServer && <p>{m.record.howPacket}</p>}
      <p class="record-verdict">
        <AcceptanceMark acceptance={judged.judgement.acceptance} />
      </p>
      {hasServer ? (
        <form
          class="fields"
          onSubmit={(event) => {
            event.preventDefault()
            void make('record')
          }}
        >
          <PageField page={page} choose={setPage} />
          <LanguageField name={m.record.language} language={inLanguage} choose={setLanguage} />
          <label>
            <span>{m.record.author}</span>
            <input
              value={author}
              autocomplete="name"
              maxLength={200}
              onInput={({ currentTarget }) => setAuthor(currentTarget.value)}
            />
          </label>
          <label>
            <span>{m.record.purpose}</span>
            <select
              value={purpose ?? ''}
              onChange={({ currentTarget: { value } }) =>
                setPurpose(packetPurposes.find((one) => one === value) ?? null)
              }
            >
              <option value="">{m.record.everything}</option>
              {packetPurposes.map((one) => (
                <option key={one} value={one}>
                  {m.record.purposes[one]}
                </option>
              ))}
            </select>
          </label>
          <label>
            <span>{m.record.rounding}</span>
            <select value={rounding} onChange={({ currentTarget }) => setRounding(currentTarget.value as PayRounding)}>
              {payRoundings.map((step) => (
                <option key={step} value={step}>
                  {step}
                </option>
              ))}
            </select>
          </label>
          <label class="check">
            <input
              type="checkbox"
              checked={photos}
              onChange={({ currentTarget }) => setPhotos(currentTarget.checked)}
            />
            {m.record.photos}
          </label>
          <button type="submit" class="button main" disabled={making.state === 'making'}>
            {m.record.make}
          </button>
          <button type="button" class="button" disabled={making.state === 'making'} onClick={() => void make('packet')}>
            {m.record.makePacket}
          </button>
        </form>
      ) : (
        <LaterPart part={documentsHere} title={m.record.failed}>
          {({ DocumentsHere }) => (
            <DocumentsHere source={source} id={run} run={judged.run} kinds={['record', 'summary', 'crew-sheet']} />
          )}
        </LaterPart>
      )}
      <p role="status">
        {making.state === 'making' && makingWords(making)}
        {making.state === 'made' && m.record.made(making.file)}
      </p>
      {making.state === 'failed' && (
        <TroubleNote
          title={making.what === 'record' ? m.record.failed : m.record.failedPacket}
          trouble={making.trouble}
        />
      )}
      <LaterPart part={handOver} title={m.record.failed}>
        {({ HandOver }) => <HandOver source={source} run={run} name={judged.run.name} />}
      </LaterPart>
    </section>
  )
}

function makingWords({ what, step }: Extract<Making, { state: 'making' }>): string {
  if (step !== null) return m.record.makingFile(step.file, step.number, step.of)
  return what === 'record' ? m.record.making : m.record.makingPacket
}
