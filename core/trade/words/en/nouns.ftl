# nouns
