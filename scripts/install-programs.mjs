import { spawnSync } from 'node:child_process'
import { setTimeout as wait } from 'node:timers/promises'

/** Debian's packages with a browser and with programs that check our documents from outside; what shows that one is there. */
const wanted = [
  ['chromium-headless-shell', ['chromium-headless-shell']],
  ['poppler-utils', ['pdftotext']],
  ['qpdf', ['qpdf']],
  ['libxml2-utils', ['xmllint']],
  ['gdal-bin', ['ogrinfo']],
  ['libreoffice-calc', ['soffice', 'libreoffice']],
  ['python3-gdal', ["/usr/bin/python3 -c 'import osgeo_utils.samples.validate_gpkg'"]],
  ['python3-ezdxf', ["/usr/bin/python3 -c 'import ezdxf'"]],
]

/** How long a package manager that is busy with something else is waited for, and how long it may take, milliseconds. */
const patience = { busy: 120_000, between: 5_000, work: 900_000 }

/**
 * Installs what is missing, where that is allowed, and says so before it does.
 * @param isAllowed  whether anything may be installed: not without the rights of root, and not where it was forbidden
 * @returns the packages that are missing all the same
 */
export async function installPrograms(isAllowed, { busy, between, work } = patience) {
  const missing = missingPackages()
  if (missing.length === 0 || !isAllowed || !isThere('apt-get')) return missing
  console.log(`Installs Debian packages on this machine: ${missing.join(', ')}`)
  console.log('They check documents from outside, and show the page. LAPWISE_TEST_INSTALL=no forbids it.')
  const waitUntil = Date.now() + busy
  for (const words of [['update'], ['install', '-y', '--no-install-recommends', ...missing]]) {
    const ended = await askPackageManager(words, waitUntil, between, work)
    if (ended === null) continue
    console.log(`apt-get ${words[0]} did not succeed: ${ended}`)
    break
  }
  return missingPackages()
}

/** Null when it is done; otherwise what went wrong. A lock that another holds is tried again until `waitUntil`. */
async function askPackageManager(words, waitUntil, between, work) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive', LC_ALL: 'C' }
  for (let isSaid = false; ; isSaid = true) {
    const { status, stderr, error } = spawnSync('apt-get', ['-qq', ...words], {
      ...{ stdio: ['ignore', 'ignore', 'pipe'], encoding: 'utf8', timeout: work, env },
    })
    if (status === 0) return null
    const isBusy = /could not get lock|unable to (acquire|lock)/i.test(stderr)
    if (!isBusy || Date.now() + between > waitUntil) return (error?.message ?? stderr).trim().split('\n').at(-1)
    if (!isSaid) console.log('The package manager is busy; waiting for it …')
    await wait(between)
  }
}

const missingPackages = () => wanted.filter(([, programs]) => !programs.some(isThere)).map(([name]) => name)

/** Whether a program is on the path; one with arguments has to succeed as well. */
function isThere(program) {
  const asked = program.includes(' ') ? program : `command -v ${program}`
  return spawnSync('sh', ['-c', asked], { stdio: 'ignore' }).status === 0
}
