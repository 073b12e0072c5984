// A process of the server that reads pictures on arrival.
import { lookAtPictures } from '../dist/program/pictures.js'

lookAtPictures()
