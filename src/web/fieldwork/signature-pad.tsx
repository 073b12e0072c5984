import { useState } from 'preact/hooks'
import { boxHeight, type Signature as Given, nameLine, type Strokes } from '../../formats/entry/signature.ts'
import { m } from '../messages.ts'

const pathOf = (strokes: Strokes): string =>
  strokes.map((stroke) => stroke.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('')).join('')

/** A signature as it was drawn; or the name on a line, when it was given by typing. */
export const Signature = ({ signature, name }: { readonly signature: Given; readonly name: string }) => (
  <svg class="signature" viewBox={`0 0 1 ${boxHeight}`} role="img" aria-label={m.sign.signatureOf(name)}>
    {signature.kind === 'drawn' ? (
      <path d={pathOf(signature.strokes)} />
    ) : (
      <>
        <path d={pathOf(nameLine)} />
        <text x="0.5" y="0.26" text-anchor="middle" font-size="0.12" font-style="italic">
          {name}
        </text>
      </>
    )}
  </svg>
)

interface Props {
  readonly strokes: Strokes
  readonly change: (strokes: Strokes) => void
}

const round = (value: number): number => Math.round(value * 1000) / 1000

/** Takes a signature by finger, pen or mouse. */
export function SignaturePad({ strokes, change }: Props) {
  const [isDown, setDown] = useState(false)
  const pointOf = (event: PointerEvent): [number, number] => {
    const box = (event.currentTarget as Element).getBoundingClientRect()
    return [round((event.clientX - box.left) / box.width), round((event.clientY - box.top) / box.width)]
  }
  return (
    <svg
      class="signature-pad"
      viewBox={`0 0 1 ${boxHeight}`}
      role="img"
      aria-label={strokes.length === 0 ? m.sign.padEmpty : m.sign.padSigned}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId)
        setDown(true)
        change([...strokes, [pointOf(event)]])
      }}
      onPointerMove={(event) => {
        const last = strokes.at(-1)
        if (isDown && last !== undefined) change([...strokes.slice(0, -1), [...last, pointOf(event)]])
      }}
      onPointerUp={() => setDown(false)}
      onPointerCancel={() => setDown(false)}
    >
      <line x1="0.05" x2="0.95" y1="0.3" y2="0.3" class="signature-line" />
      <path d={pathOf(strokes)} />
    </svg>
  )
}
