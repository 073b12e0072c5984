import type { RulePicture } from '../../core/hardware/hardware-sheet.ts'

/** A picture of a sheet's own; what it shows is said in words. */
export const OwnPicture = ({ type, base64, alt }: RulePicture) => (
  <img class="own-picture" src={`data:${type};base64,${base64}`} alt={alt} />
)
