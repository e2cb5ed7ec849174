// Answers with what was kept of a job's steps where the network does not: the page at the machine, its script and style.
const kept = 'bench'
const patience = 5000
const same = { ignoreSearch: true, ignoreVary: true }

self.addEventListener('install', () => self.skipWaiting())
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()))

const fromNetwork = async (request) => {
  const answer = await fetch(request)
  if (answer.ok && !answer.redirected) (await caches.open(kept)).put(request.url.split('?')[0], answer.clone())
  return answer
}

const orKept = async (request) => {
  const known = await caches.match(request.url.split('?')[0], same)
  if (!known) return fromNetwork(request)
  const late = new Promise((resolve) => setTimeout(resolve, patience, known))
  return Promise.race([fromNetwork(request).catch(() => known), late])
}

self.addEventListener('fetch', (event) => {
  const { pathname } = new URL(event.request.url)
  if (event.request.method !== 'GET' || !/^\/jobs\/[^/]+\/bench$|^\/static\//.test(pathname)) return
  event.respondWith(orKept(event.request))
})
