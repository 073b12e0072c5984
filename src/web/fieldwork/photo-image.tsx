import { useEffect, useState } from 'preact/hooks'
import type { RunSource } from '../data/run-source.ts'
import { m } from '../messages.ts'

interface Props {
  readonly source: RunSource
  readonly sha256: string
  readonly words: string
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

export function PhotoImage({ source, sha256, words }: Props) {
  const address = usePhoto(source, sha256)
  if (address === null) return <span class="photo-blank" />
  if (address === 'missing') return <span class="photo-blank">{m.photo.notHere}</span>
  return <img class="photo" src={address} alt={words} loading="lazy" />
}
