import { useEffect, useRef, useState } from 'preact/hooks'
import { m } from '../messages.ts'

interface Props {
  /** Keeps one shot; told whether it is kept. */
  readonly keep: (shot: File) => Promise<boolean>
  /** The device's own way to a photo. */
  readonly otherWay: () => void
  readonly close: () => void
}

/** The camera within the page, which a device does not put away for it: several shots in a row, each kept at once. */
export function Camera({ keep, otherWay, close }: Props) {
  const dialog = useRef<HTMLDialogElement>(null)
  const video = useRef<HTMLVideoElement>(null)
  const [state, setState] = useState<'starting' | 'ready' | 'keeping' | 'none'>('starting')
  const [kept, setKept] = useState(0)

  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal()
    let isOver = false
    let stream: MediaStream | null = null
    const end = (): void => {
      for (const track of stream?.getTracks() ?? []) track.stop()
    }
    const start = async (): Promise<void> => {
      // Refused, or there is none: the device's own way is offered then.
      stream = await navigator.mediaDevices.getUserMedia(wanted).catch(() => null)
      if (isOver) return end()
      if (stream === null || video.current === null) return setState('none')
      video.current.srcObject = stream
    }
    void start()
    return () => {
      isOver = true
      end()
    }
  }, [])

  const shoot = async (): Promise<void> => {
    setState('keeping')
    const shot = await shotOf(video.current!)
    const isKept = shot !== null && (await keep(shot))
    if (isKept) setKept((before) => before + 1)
    setState('ready')
    // Why it was not kept stands where the photos are.
    if (!isKept) dialog.current?.close()
  }
  return (
    <dialog ref={dialog} class="camera" aria-labelledby="camera" onClose={close}>
      <h2 id="camera">{m.photo.take}</h2>
      {state === 'none' ? (
        <p>{m.camera.none}</p>
      ) : (
        <video ref={video} autoplay muted playsInline onLoadedMetadata={() => setState('ready')} />
      )}
      <p role="status">{state === 'keeping' ? m.photo.adding : kept > 0 && m.camera.kept(kept)}</p>
      <div class="photo-buttons">
        <button type="button" class="button" onClick={() => dialog.current?.close()}>
          {m.camera.done}
        </button>
        {state === 'none' ? (
          <button
            type="button"
            class="button main"
            onClick={() => {
              dialog.current?.close()
              otherWay()
            }}
          >
            {m.camera.otherWay}
          </button>
        ) : (
          <button type="button" class="button main" disabled={state !== 'ready'} onClick={() => void shoot()}>
            {m.camera.shoot}
          </button>
        )}
      </div>
    </dialog>
  )
}

/** The camera at the back, as finely as it sees: a photo is shrunk as any other is. */
const wanted: MediaStreamConstraints = {
  video: { facingMode: { ideal: 'environment' }, width: { ideal: 4096 }, height: { ideal: 3072 } },
}

async function shotOf(video: HTMLVideoElement): Promise<File | null> {
  const canvas = document.createElement('canvas')
  canvas.width = video.videoWidth
  canvas.height = video.videoHeight
  canvas.getContext('2d')!.drawImage(video, 0, 0)
  // Nearly all of it is kept here: what is kept in the end is made smaller afterwards.
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', 0.95))
  return blob === null ? null : new File([blob], 'shot.jpg', { type: 'image/jpeg' })
}
