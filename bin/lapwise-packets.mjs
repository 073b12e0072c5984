// A process of the server that makes packets.
import { makePackets } from '../dist/program/packets.js'

makePackets()
