### What the book says when something goes wrong.
