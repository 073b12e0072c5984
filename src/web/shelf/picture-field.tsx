import { useState } from 'preact/hooks'
import type { RulePicture } from '../../core/hardware/hardware-sheet.ts'
import type { ControlProps } from '../form/form-field.ts'
import { OwnPicture } from '../parts/own-picture.tsx'
import { type PictureRefusal, pictureOfFile } from './picture-of-file.ts'
import { words } from './words.ts'

/** A picture of the sheet's own: taken from a file, made small on this device, and taken away again. */
export function PictureField({ field, id, change }: ControlProps) {
  const w = words().form.picture
  const [refused, setRefused] = useState<PictureRefusal | null>(null)
  const picture = field.value as RulePicture | undefined
  const take = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return
    const made = await pictureOfFile(file)
    setRefused(made.ok ? null : made.error)
    if (made.ok) change(field, { ...made.value, alt: picture?.alt ?? '' })
  }
  return (
    <fieldset class="form-own-picture" aria-describedby={`${id}-how`}>
      <legend>{field.label}</legend>
      {picture !== undefined && <OwnPicture {...picture} />}
      <label>
        <span>{picture === undefined ? w.take : w.another}</span>
        <input
          id={id}
          type="file"
          accept="image/png,image/jpeg,image/webp"
          onChange={({ currentTarget }) => void take(currentTarget.files?.[0])}
        />
      </label>
      <p class="hint" id={`${id}-how`}>
        {w.how}
      </p>
      {refused !== null && (
        <p class="field-wrong" role="alert">
          {w.refused[refused]}
        </p>
      )}
      {picture !== undefined && (
        <button type="button" class="button small" onClick={() => change(field, undefined)}>
          {w.remove}
        </button>
      )}
    </fieldset>
  )
}
