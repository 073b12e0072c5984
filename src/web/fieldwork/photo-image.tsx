import { useEffect, useState } from 'preact/hooks'
import type { PhotoStrokes } from '../../core/record/photo-strokes.ts'
import type { RunSource } from '../data/run-source.ts'
import { asWritten, m } from '../messages.ts'
import { StrokesOver } from './strokes-over.tsx'

interface Props {
  readonly source: RunSource
  readonly sha256: string
  readonly words: string
  /** What was drawn on the photos of the run. */
  readonly strokes: readonly PhotoStrokes[]
}

/** The address of a photo's bytes while it is shown: null until they are here, `missing` when nobody has them yet. */
export function usePhoto(source: RunSource, sha256: string): string | 'missing' | null {
  const [address, setAddress] = useState<string | null>(null)
  useEffect(() => {
    let made: string | null = null
    let isWanted = true
    void source.photo(sha256).then((answer) => {
      if (!isWanted) return
      if (!answer.ok || answer.value === null) {
        setAddress('missing')
        return
      }
      made = URL.createObjectURL(answer.value)
      setAddress(made)
    })
    return () => {
      isWanted = false
      if (made !== null) URL.revokeObjectURL(made)
    }
  }, [source, sha256])
  return address
}

export function PhotoImage({ source, sha256, words, strokes }: Props) {
  const address = usePhoto(source, sha256)
  if (address === null) return <span class="photo-blank" />
  if (address === 'missing') return <span class="photo-blank">{m.photo.notHere}</span>
  const drawn = strokes.filter(({ photo }) => photo === sha256)
  const alt = [words, ...new Set(drawn.map(({ by }) => m.photo.markedBy(asWritten(by))))].join(', ')
  return (
    <span class="photo">
      <img src={address} alt={alt} loading="lazy" />
      {drawn.map((one) => (
        <StrokesOver key={one.id} drawn={one} />
      ))}
    </span>
  )
}
