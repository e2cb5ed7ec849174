import type { TopicName } from './index.js'

/** A topic as it stands at the head of a finding: "mains voltage", "DC plug". */
export const topicTag = (topic: TopicName): string => topic.replaceAll('-', ' ').replace(/^dc /, 'DC ')
