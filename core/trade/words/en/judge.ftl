# judge
