import type { DevicePosition } from '../../formats/device-position.ts'

/** Longest wait for a position, ms: nobody stands beside traffic for it. Our judgement. */
const patience = 8000

/** Where the device says it is; null when it does not say, or not soon enough. Never required. */
export function devicePosition(): Promise<DevicePosition | null> {
  if (!('geolocation' in navigator)) return Promise.resolve(null)
  return new Promise((resolve) => {
    navigator.geolocation.getCurrentPosition(
      ({ coords, timestamp }) =>
        resolve({
          latitude: coords.latitude,
          longitude: coords.longitude,
          accuracy: coords.accuracy,
          fixedAt: new Date(timestamp).toISOString(),
        }),
      () => resolve(null),
      { enableHighAccuracy: true, timeout: patience, maximumAge: 30_000 },
    )
  })
}
