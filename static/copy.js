// Copies the text of the box that a button names. Without script the box can be copied by hand.
for (const button of document.querySelectorAll('button[data-copy]')) {
  button.hidden = false
  button.addEventListener('click', async () => {
    const box = document.getElementById(button.dataset.copy)
    box.select()
    try {
      await navigator.clipboard.writeText(box.value)
    } catch {
      // outside a secure context there is no clipboard to write to
      document.execCommand('copy')
    }
    document.querySelector('#live').textContent = 'Copied.'
  })
}
