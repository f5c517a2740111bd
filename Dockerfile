# One image for the API, the worker, backup and restore: docker-compose.yml says which it runs.
FROM node:20-bookworm-slim AS build
WORKDIR /drumline
COPY package.json package-lock.json .npmrc tsconfig.base.json ./
COPY libs ./libs
COPY apps ./apps
RUN npm ci && npx tsc -b apps/server && npm run build-pages && npm prune --omit=dev

FROM node:20-bookworm-slim
ENV NODE_ENV=production
WORKDIR /drumline
COPY --from=build /drumline/package.json ./
COPY --from=build /drumline/node_modules ./node_modules
COPY --from=build /drumline/libs ./libs
COPY --from=build /drumline/apps ./apps
RUN mkdir /backups && chown node:node /backups
USER node
EXPOSE 8420
CMD ["node", "apps/server/dist/api.js"]
