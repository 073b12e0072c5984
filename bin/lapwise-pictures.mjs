// A process of the server that reads pictures on arrival.
import { register } from 'tsx/esm/api'

register()
const { lookAtPictures } = await import('../src/server/look-at-pictures.ts')
lookAtPictures()
