/** What a packet is made for; made for none of these it holds all that can be true when it is made. */
export const packetPurposes = ['crew', 'survey', 'estimate', 'record'] as const

export type PacketPurpose = (typeof packetPurposes)[number]
