import {
  AmbientLight,
  DirectionalLight,
  Group,
  HemisphereLight,
  Line,
  PerspectiveCamera,
  Points,
  Scene,
  WebGLRenderer,
} from 'three'
import type { SceneColours } from './scene-colours.ts'
import type { SceneObjects } from './scene-objects.ts'

/** `lost`: the device took the drawing away, and may give it back. */
export type StageState = 'ready' | 'lost'

/** The one canvas on which scenes are drawn while the page is open. */
export interface Stage {
  readonly canvas: HTMLCanvasElement
  readonly camera: PerspectiveCamera
  state(): StageState
  /** Tells of every change of state. */
  onState(hear: (state: StageState) => void): () => void
  /** Puts what is drawn in the place of what was. */
  show(objects: SceneObjects, colours: SceneColours): void
  /** Lays something over it, in the place of what was laid there. */
  lay(over: Group): void
  /** Draws at the next frame, and goes on as long as `move` says so. */
  ask(): void
  /** Called before each frame with the milliseconds since the last; whether something still moves. */
  move: (passed: number) => boolean
  /** Fits the canvas to the box it lies in. */
  fit(): void
}

let only: Stage | null | undefined

/** The stage of this page; null where the device draws no scenes. */
export function theStage(): Stage | null {
  if (only === undefined) only = openStage()
  return only
}

/** Of full sharpness; a device that does not keep up draws coarser while something moves. */
const sharpness = [1, 0.7, 0.5] as const
/** Milliseconds for a frame over which it is drawn coarser: 40 frames a second. */
const tooLong = 25
/** Frames that are averaged. */
const watched = 6

function openStage(): Stage | null {
  const renderer = rendererOf()
  if (renderer === null) return null
  const canvas = renderer.domElement
  const world = new Scene()
  const camera = new PerspectiveCamera(45, 1, 0.05, 600)
  const [sky, sun, all] = [new HemisphereLight(), new DirectionalLight(), new AmbientLight()]
  world.add(sky, sun, all)
  let shown: SceneObjects | null = null
  let over = new Group()
  let state: StageState = 'ready'
  const hearers = new Set<(state: StageState) => void>()
  let step = 0
  let asked = 0
  let last = 0
  let took: number[] = []
  let wasMoving = false

  const become = (next: StageState): void => {
    state = next
    canvas.dataset.state = next
    for (const hear of hearers) hear(next)
  }
  const sharpen = (): void => renderer.setPixelRatio(Math.min(devicePixelRatio, 2) * sharpness[step]!)
  const draw = (now: number): void => {
    asked = 0
    if (state === 'lost' || shown === null) return
    const passed = last === 0 ? 16 : now - last
    const moves = stage.move(Math.min(passed, 100))
    if (moves && wasMoving) watch(passed)
    // What stands still is drawn sharp.
    if (!moves && step > 0) {
      step = 0
      sharpen()
    }
    shown.lookFrom(camera.position)
    renderer.render(world, camera)
    tell()
    wasMoving = moves
    last = moves ? now : 0
    if (moves) stage.ask()
  }
  const watch = (passed: number): void => {
    took = [...took.slice(1 - watched), passed]
    if (took.length < watched || took.reduce((sum, one) => sum + one, 0) / watched < tooLong) return
    if (step === sharpness.length - 1) return
    step++
    took = []
    sharpen()
  }
  /** What was drawn, for who measures it. */
  const tell = (): void => {
    const { calls, triangles } = renderer.info.render
    const { width, height } = canvas
    // Colour and depth of what is seen, four samples each and the picture that is made of them.
    const bytes = (shown?.bytes ?? 0) + width * height * 4 * 9
    Object.assign(canvas.dataset, { calls, triangles, bytes, frame: renderer.info.render.frame })
  }
  const stage: Stage = {
    canvas,
    camera,
    state: () => state,
    onState: (hear) => {
      hearers.add(hear)
      return () => hearers.delete(hear)
    },
    show: (objects, colours) => {
      if (shown !== null) {
        world.remove(shown.group)
        shown.free()
      }
      shown = objects
      world.add(objects.group)
      world.background = colours.sky
      sky.color.copy(colours.sky).lerp(colours.paper, 0.5)
      sky.groundColor.copy(colours.of.ground)
      sky.intensity = colours.isNight ? 1.1 : 2
      sun.intensity = colours.isNight ? 1.4 : 2.2
      sun.position.set(-4, 6, -5)
      all.intensity = colours.isNight ? 0.9 : 0.5
      stage.ask()
    },
    lay: (next) => {
      world.remove(over)
      over.traverse((one) => {
        if (!(one instanceof Points || one instanceof Line)) return
        one.geometry.dispose()
        one.material.dispose()
      })
      over = next
      world.add(over)
      stage.ask()
    },
    ask: () => {
      if (asked === 0) asked = requestAnimationFrame(draw)
    },
    move: () => false,
    fit: () => {
      const { clientWidth, clientHeight } = canvas.parentElement ?? canvas
      if (clientWidth === 0 || clientHeight === 0) return
      sharpen()
      renderer.setSize(clientWidth, clientHeight, false)
      camera.aspect = clientWidth / clientHeight
      camera.updateProjectionMatrix()
      stage.ask()
    },
  }
  canvas.addEventListener('webglcontextlost', (event) => {
    event.preventDefault()
    become('lost')
  })
  canvas.addEventListener('webglcontextrestored', () => {
    become('ready')
    stage.ask()
  })
  canvas.dataset.state = state
  return stage
}

function rendererOf(): WebGLRenderer | null {
  try {
    return new WebGLRenderer({ antialias: true, powerPreference: 'low-power' })
  } catch {
    // No device for it, or the browser was told not to.
    return null
  }
}
