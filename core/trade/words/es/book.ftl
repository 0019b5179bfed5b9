### Lo que dice el libro cuando algo sale mal.
