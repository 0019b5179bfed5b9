# remedies
