// Keeps the page at the machine, its script and style on this device, for when there is no network: from that page itself and
// from the page of its job.
{
  const [, job] = /^(\/jobs\/[^/]+)(?:\/bench)?$/.exec(location.pathname) ?? []
  const remember = async () => {
    if (!job || !('serviceWorker' in navigator) || !navigator.onLine || document.documentElement.dataset.address) return
    try {
      await navigator.serviceWorker.register('/static/offline.js', { scope: '/jobs/' })
      const page = `${job}/bench`
      const answer = await fetch(page)
      if (!answer.ok || answer.redirected) return
      const cache = await caches.open('bench')
      await cache.put(page, answer.clone())
      const { head } = new DOMParser().parseFromString(await answer.text(), 'text/html')
      const files = head.querySelectorAll('link[href^="/static/"], script[src^="/static/"]')
      await cache.addAll([...files].map((file) => file.getAttribute('href') ?? file.getAttribute('src')))
    } catch {
      // without it the page works as long as it is not loaded anew
    }
  }
  remember()
  addEventListener('online', remember)
}
