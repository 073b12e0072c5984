/** Whether a server is behind this page; a copy that a plain host hands out as files has none, and keeps all on the device. */
export const hasServer = import.meta.env?.MODE !== 'static'
