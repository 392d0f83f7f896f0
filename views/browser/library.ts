// The library page: what is not asked for stays out of the address.

document.addEventListener('htmx:configRequest', (event) => {
  const { parameters } = (event as CustomEvent<{ parameters: Record<string, unknown> }>).detail
  for (const [name, value] of Object.entries(parameters)) if (value === '') delete parameters[name]
})
