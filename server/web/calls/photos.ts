import { z } from 'zod'
import type { Kind, Photo } from '../../store/store.js'
import { Unprocessable } from '../errors.js'
import { newEntry } from '../once.js'
import { parse } from '../parse.js'
import { keepPhoto, mostPhotos, photoForm } from '../parts/keepPhoto.js'
import { sharing } from '../parts/sharing.js'
import { photoJson } from '../records/jobRecord.js'
import { photoAnswer } from '../schemas/answers.js'
import { captionSchema } from '../schemas/photos.js'
import { type Call, call } from './call.js'

const owners: { kind: Kind; path: string }[] = [
  { kind: 'job', path: '/api/jobs' },
  { kind: 'supply', path: '/api/shelf/supplies' },
  { kind: 'device', path: '/api/shelf/devices' },
]

/** the same photo sent twice at once is worked on once; an entry's id is of no other store */
const keepTogether = sharing<Photo>()

/** Photos of jobs and of the shelf. */
export const photoCalls: readonly Call[] = [
  ...owners.flatMap(({ kind, path }) => [
    call({
      method: 'get',
      path: `${path}/:id/photos`,
      group: 'Photos',
      summary: 'The photos of a record',
      answer: z.object({ photos: z.array(photoAnswer), most: z.number() }),
      async run(_body, { store, named }) {
        await store.get(kind, named('id'))
        return { photos: (await store.photos(named('id'))).map(photoJson), most: mostPhotos }
      },
    }),
    call({
      method: 'post',
      path: `${path}/:id/photos`,
      group: 'Photos',
      summary: 'Keep a photo: a file in the field “photo”, words in “caption”; what it tells of its place is taken out',
      file: { type: 'multipart/form-data', read: [photoForm] },
      answer: photoAnswer,
      status: 201,
      once: true,
      async run(_body, asked) {
        const { store, named, request } = asked
        const owner = named('id')
        await store.get(kind, owner)
        const caption = parse(captionSchema, (request.body as { caption?: unknown } | undefined)?.caption)
        if (!request.file)
          throw new Unprocessable([{ path: 'photo', message: 'Choose a photo: JPEG, PNG or WebP, up to 8 MB.' }])
        const { buffer } = request.file
        const entry = newEntry(request, caption, buffer)
        return photoJson(await keepTogether(entry, () => keepPhoto(asked, owner, caption, buffer, entry)))
      },
    }),
  ]),
  call({
    method: 'delete',
    path: '/api/photos/:photoId',
    group: 'Photos',
    summary: 'Delete a photo; can be undone for 30 days',
    answer: 'nothing',
    status: 204,
    run: (_body, { store, named }) => store.removePhoto(named('photoId')),
  }),
  call({
    method: 'post',
    path: '/api/photos/:photoId/restore',
    group: 'Photos',
    summary: 'Undo the deletion of a photo',
    answer: photoAnswer,
    run: async (_body, { store, named }) => photoJson(await store.restorePhoto(named('photoId'), mostPhotos)),
  }),
]
