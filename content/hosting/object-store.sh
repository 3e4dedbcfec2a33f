#!/bin/sh
# Heel to Ridge in an object store with an S3 interface. Needs a client for it, here "aws", and the built site in dist.
# Usage: BUCKET=s3://our-notes sh object-store.sh
set -eu
: "${BUCKET:?say where the site goes, such as s3://our-notes or s3://our-notes/roof}"

# First what never changes, so that no page comes before what it asks for; every browser may keep it for good.
for part in _astro pagefind/fragment pagefind/index pagefind/filter; do
    aws s3 cp --recursive "dist/$part/" "$BUCKET/$part/" --cache-control "{{kept-for-good}}"
done

# Then all else. "cp" and not "sync", which takes a page for the same when its size is: a value that goes from 2 to 3 does not change it.
aws s3 cp --recursive dist/ "$BUCKET/" --cache-control "{{asked-anew}}" \
    --exclude "_astro/*" --exclude "pagefind/fragment/*" --exclude "pagefind/index/*" --exclude "pagefind/filter/*" --exclude "*.gz"

# At last take away what the site no longer has; leave a day for pages that are still open, if you like.
# aws s3 sync dist/ "$BUCKET/" --delete --size-only --exclude "*.gz"

# In the store's own settings: "index.html" as the index of every folder, "404.html" as the page for errors. A store sends no headers of
# its own; each page holds its policy itself. What only headers can say, let the delivery network before it add (see nginx.conf).
